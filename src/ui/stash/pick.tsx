import type { KeyboardEvent } from "react";
import { findWords as words } from "../words/find.ts";
import { besideIt, choose, standAt, stretchTo, useChoosing } from "./choosing.ts";
import styles from "./pick.module.css";

type Props = Readonly<{
  id: string;
  name: string /** The first in sight: the Tab key stops here at first. */;
  first: boolean;
}>;

const by: Readonly<Record<string, 1 | -1>> = { ArrowDown: 1, ArrowUp: -1 };

/** The arrow keys go from row to row; with Shift they choose on the way. */
function onKeyDown(event: KeyboardEvent, id: string): void {
  const step = by[event.key];
  if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  const next = besideIt(id, step);
  if (next === null) return;
  document.querySelector<HTMLElement>(`[data-pick="${CSS.escape(next)}"]`)?.focus();
  if (event.shiftKey) stretchTo(id, next);
}

/** The tick of one thing, while several are being chosen. */
export function Pick({ id, name, first }: Props) {
  const chosen = useChoosing(({ ids }) => ids.has(id));
  const stop = useChoosing(({ at }) => (at === null ? first : at === id));
  return (
    <label className={styles.pick}>
      <input
        type="checkbox"
        className={styles.box}
        data-pick={id}
        aria-label={words.chooseOne(name)}
        tabIndex={stop ? 0 : -1}
        checked={chosen}
        onFocus={() => standAt(id)}
        onKeyDown={(event) => onKeyDown(event, id)}
        onChange={({ nativeEvent }) => choose(id, nativeEvent instanceof MouseEvent && nativeEvent.shiftKey)}
      />
    </label>
  );
}
