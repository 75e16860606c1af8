import { create } from "zustand";
import { words } from "../words/index.ts";
import styles from "./notice.module.css";

type Told = Readonly<{ text: string; undo?: (() => void) | undefined; at: number; since: number }>;

/** How long a notice stays through a change of page. */
const staysMs = 3_000;

const useTold = create<{ told: Told | null; count: number }>(() => ({ told: null, count: 0 }));

/**
 * Tells what was just done, once, with a way back. It stays until the next one, the next page or *Close*:
 * nothing disappears by itself, so that slow readers lose nothing.
 */
export function notify(text: string, undo?: () => void): void {
  useTold.setState(({ count }) => ({
    count: count + 1,
    told: { text, undo, at: count + 1, since: performance.now() },
  }));
}

/** Takes the notice away, as when the page it belongs to is left. */
export const clearNotice = (): void => useTold.setState({ told: null });

/** Takes away a notice that was told on an earlier page. One told while leaving a page stays for the next. */
export function clearOldNotice(): void {
  const { told } = useTold.getState();
  if (told && performance.now() - told.since > staysMs) clearNotice();
}

/** The bar that notices appear in. One per frame; it is read out when its text changes. */
export function Notices() {
  const told = useTold((state) => state.told);
  return (
    <div role="status" aria-live="polite" className={styles.place}>
      {told && <NoticeBar key={told.at} text={told.text} undo={told.undo} onClose={clearNotice} />}
    </div>
  );
}

type BarProps = Readonly<{ text: string; undo?: (() => void) | undefined; onClose: () => void }>;

/** One notice: what was done, and Undo. */
export function NoticeBar({ text, undo, onClose }: BarProps) {
  return (
    <div className={styles.bar}>
      <span>{text}</span>
      {undo && (
        <button
          type="button"
          className={styles.act}
          onClick={() => {
            onClose();
            undo();
          }}
        >
          {words.undo}
        </button>
      )}
      {undo && (
        <span className={styles.key} aria-hidden="true">
          {words.undoKey}
        </span>
      )}
      <button type="button" className={styles.close} onClick={onClose}>
        {words.dismiss}
      </button>
    </div>
  );
}
