import { lazy, type ReactNode, Suspense, useId, useRef, useState } from "react";
import { type Term, terms } from "../words/terms.ts";
import { besideButton } from "./beside-button.ts";
import styles from "./term.module.css";

// What the words mean is much text, and loads only when somebody asks.
const Meaning = lazy(() => import("./meaning.tsx").then((module) => ({ default: module.Meaning })));

type Props = Readonly<{ of: Term; children?: ReactNode }>;

/** One of our own words: press it, and it says what it means, in place. */
export function TermText({ of, children = terms[of][0] }: Props) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const opened = useRef<HTMLSpanElement>(null);
  const [open, setOpen] = useState(false);
  const [place, setPlace] = useState({ left: 0, top: 0 });

  const settle = () => {
    if (!button.current || !opened.current) return;
    setPlace(besideButton(button.current.getBoundingClientRect(), opened.current.getBoundingClientRect()));
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className={styles.term}
        popoverTarget={id}
        aria-expanded={open}
        aria-controls={id}
      >
        {children}
      </button>
      <span
        ref={opened}
        id={id}
        popover="auto"
        className={styles.opened}
        style={place}
        onToggle={(event) => setOpen(event.newState === "open")}
      >
        {open && (
          <Suspense fallback={null}>
            <Meaning of={of} onShown={settle} />
          </Suspense>
        )}
      </span>
    </>
  );
}
