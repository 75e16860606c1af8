import { type ReactNode, useId, useState } from "react";
import { words } from "../words/index.ts";
import { Button } from "./button.tsx";
import { classes } from "./classes.ts";
import { Opening } from "./opening.tsx";
import styles from "./why.module.css";

/** What `useWhy` hands out: the state that a button and what it opens share. */
export type WhyState = Readonly<{ open: boolean; panelId: string; toggle: () => void }>;

/** One thing to open in place. Use it where the button and what it opens stand apart. */
export function useWhy(startsOpen = false): WhyState {
  const panelId = useId();
  const [open, setOpen] = useState(startsOpen);
  return { open, panelId, toggle: () => setOpen(!open) };
}

type ButtonProps = Readonly<{
  why: WhyState;
  /** What it is about, read out after "why?": "Gouache, moss". */
  about: string;
  /** Another word than "why?", such as "why these figures?". */
  label?: string;
}>;

/** "why?", or "close" while it is open. */
export function WhyButton({ why, about, label = words.why }: ButtonProps) {
  return (
    <Button
      kind="quiet"
      className={styles.button ?? ""}
      aria-expanded={why.open}
      aria-controls={why.panelId}
      onClick={why.toggle}
    >
      {why.open ? words.close : label}
      <span className="visually-hidden">{words.about(about)}</span>
    </Button>
  );
}

type OpenedProps = Readonly<{ why: WhyState; children: ReactNode; bare?: boolean }>;

/** What a `why?` opens: on the ground behind, from the double rule to the fore-edge; `bare` without that ground. */
export function Opened({ why, children, bare = false }: OpenedProps) {
  return (
    <div id={why.panelId} hidden={!why.open}>
      {why.open && (
        <Opening>
          <div className={classes(!bare && styles.opened)}>{children}</div>
        </Opening>
      )}
    </div>
  );
}

/** "why?" with what it opens right under it. */
export function Why({
  about,
  label,
  children,
}: Readonly<{ about: string; label?: string; children: ReactNode }>) {
  const why = useWhy();
  return (
    <div className={styles.why}>
      <WhyButton why={why} about={about} {...(label === undefined ? {} : { label })} />
      <div id={why.panelId} hidden={!why.open}>
        {why.open && (
          <Opening>
            <div className={styles.inPlace}>{children}</div>
          </Opening>
        )}
      </div>
    </div>
  );
}
