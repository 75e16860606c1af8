import { lazy, Suspense, useId } from "react";
import type { Kit } from "../../../engine/worth/index.ts";
import { Beside, Button, classes } from "../../parts/index.ts";
import { Opening } from "../../parts/opening.tsx";
import { Swatch } from "../../swatch/index.ts";
import { kitsWords } from "../../words/kits.ts";
import type { LineRow } from "../view/line-rows.ts";
import styles from "./contents.module.css";

const LineEditor = lazy(() => import("./line-editor.tsx").then((module) => ({ default: module.LineEditor })));

const text = kitsWords.contents;

type Props = Readonly<{ kit: Kit; row: LineRow; open: boolean; onToggle: () => void }>;

/** One line: number, swatch, name and facts, and who says so; opened, every field of it. */
export function LineItem({ kit, row, open, onToggle }: Props) {
  const panel = useId();
  const notes = [...(row.told.note ? [row.told.note] : []), ...row.corrections];
  return (
    <li>
      <Beside note={notes.length > 0 ? notes.join(" ") : undefined}>
        <div className={classes(styles.line, open && styles.open)}>
          <span className={styles.number}>{row.number}</span>
          <Swatch item={row.swatch} width={88} height={40} />
          <p className={styles.words}>
            <strong className={styles.name}>{row.name}</strong>{" "}
            <span className={styles.facts}>{row.facts}</span>
          </p>
          <p className={classes(styles.source, row.told.differs && styles.differs)}>{row.told.text}</p>
          <Button
            kind="quiet"
            className={styles.change ?? ""}
            aria-expanded={open}
            aria-controls={panel}
            onClick={onToggle}
          >
            {open ? text.close : text.change}
            <span className="visually-hidden">{text.about(row.name)}</span>
          </Button>
        </div>
      </Beside>
      <div id={panel} hidden={!open}>
        {open && (
          <Opening>
            <Suspense fallback={null}>
              <LineEditor kit={kit} line={row.line} onGone={onToggle} />
            </Suspense>
          </Opening>
        )}
      </div>
    </li>
  );
}
