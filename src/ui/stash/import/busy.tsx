import { useEffect, useRef } from "react";
import { Button } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import { format } from "../../words/index.ts";
import styles from "./import.module.css";

type Props = Readonly<{
  text: string;
  progress?: Readonly<{ done: number; all: number }> | null;
  onCancel?: (() => void) | undefined;
}>;

/** Something takes a while: what it is, how far it is, and a way to end it. */
export function Busy({ text, progress = null, onCancel }: Props) {
  return (
    <div className={styles.busy}>
      <p role="status">{text}</p>
      {progress && (
        <>
          <progress className={styles.progress} aria-label={text} max={progress.all} value={progress.done} />
          <p className={styles.fact}>
            {words.progress(format.count(progress.done), format.count(progress.all))}
          </p>
        </>
      )}
      {onCancel && <Button onClick={onCancel}>{words.cancel}</Button>}
    </div>
  );
}

/** A heading that takes the focus when what it heads has come about. */
export function Arrived({ children }: Readonly<{ children: string }>) {
  const ref = useRef<HTMLHeadingElement>(null);
  useEffect(() => ref.current?.focus({ preventScroll: true }), []);
  return (
    <h2 ref={ref} tabIndex={-1} className={styles.arrived}>
      {children}
    </h2>
  );
}
