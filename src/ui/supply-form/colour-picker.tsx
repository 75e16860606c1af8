import { useEffect, useId, useRef, useState } from "react";
import { supplyWords as words } from "../words/supply.ts";
import styles from "./supply-form.module.css";

type Props = Readonly<{
  hex: string | null;
  onPick: (hex: string) => void;
}>;

/** The browser's own colour picker. It tells of a colour once it is chosen, not of each one on the way. */
export function ColourPicker({ hex, onPick }: Props) {
  const id = useId();
  const ref = useRef<HTMLInputElement>(null);
  const [draft, setDraft] = useState<string | null>(null);
  useEffect(() => {
    const input = ref.current;
    const chosen = () => {
      setDraft(null);
      if (input) onPick(input.value);
    };
    // React's onChange is the input event, which fires all the while; "change" fires once.
    input?.addEventListener("change", chosen);
    return () => input?.removeEventListener("change", chosen);
  }, [onPick]);
  return (
    <>
      <label htmlFor={id} className="visually-hidden">
        {words.colourPick}
      </label>
      <input
        ref={ref}
        id={id}
        type="color"
        className={styles.picker}
        value={draft ?? hex ?? "#808080"}
        data-open={hex === null || undefined}
        onChange={(event) => setDraft(event.currentTarget.value)}
      />
    </>
  );
}
