import { type ReactNode, useEffect, useId, useRef } from "react";
import { Acts } from "./button.tsx";
import styles from "./dialog.module.css";

type Props = Readonly<{
  open: boolean;
  /** A question or a statement: what is about to happen. */
  title: ReactNode;
  /** Escape, or any act that puts nothing through. */
  onClose: () => void;
  /** Buttons that say what they do; the first is the act itself. */
  acts: ReactNode;
  wide?: boolean;
  children?: ReactNode;
}>;

/** A dialog: the page waits behind it, and the focus goes back to where it was when it closes. */
export function Dialog({ open, title, onClose, acts, wide = false, children }: Props) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const dialog = ref.current;
    if (!dialog || dialog.open === open) return;
    if (open) dialog.showModal();
    else dialog.close();
  }, [open]);
  return (
    <dialog
      ref={ref}
      className={wide ? `${styles.dialog} ${styles.wide}` : styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        if (event.target !== ref.current) return; // a file picker in it was cancelled
        event.preventDefault();
        onClose();
      }}
    >
      {open && (
        <>
          <h2 id={titleId} className={styles.title}>
            {title}
          </h2>
          <div className={styles.body}>{children}</div>
          <Acts>{acts}</Acts>
        </>
      )}
    </dialog>
  );
}
