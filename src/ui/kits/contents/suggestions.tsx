import { classes } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import type { Suggestion } from "../view/suggest.ts";
import styles from "./typed-line.module.css";
import type { EntryState } from "./use-entry.ts";

const text = kitsWords.entry;

type Props = Readonly<{ box: EntryState["box"]; rows: readonly Suggestion[] }>;

/** Lines of earlier kits that fit what is typed: the arrow keys go through them, Enter takes one. */
export function Suggestions({ box, rows }: Props) {
  const isOpen = box.open && rows.length > 0;
  return (
    <>
      <ul {...box.listProps} aria-label={text.suggestions} hidden={!isOpen} className={styles.suggestions}>
        {rows.map(({ key, name, facts, kit }, index) => (
          <li
            key={key}
            {...box.optionProps(index)}
            className={classes(styles.suggestion, index === box.active && styles.active)}
          >
            <span>
              <strong>{name}</strong> {facts}
            </span>
            <span className={styles.from}>{kit}</span>
          </li>
        ))}
      </ul>
      <span role="status" className="visually-hidden">
        {isOpen ? text.suggested(rows.length) : ""}
      </span>
    </>
  );
}
