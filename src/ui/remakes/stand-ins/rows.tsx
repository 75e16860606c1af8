import { useMemo } from "react";
import type { KitMatch } from "../../../engine/match/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { RowView } from "../view/rows.ts";
import { type Subject, shelvesOf } from "../view/solve.ts";
import { stashOptions } from "../view/stash-options.ts";
import { PairRow } from "./pair-row.tsx";
import styles from "./rows.module.css";

const words = remakeWords.standIns;

type Props = Readonly<{
  subject: Subject;
  match: KitMatch;
  rows: readonly RowView[];
  acts: StandInActs;
  washed: ReadonlySet<string>;
  onAct: (line: string) => void;
}>;

/** The spine: the kit's words up to it, the stash's from it, one line of joined colours down the middle. */
export function Rows({ subject, match, rows, acts, washed, onAct }: Props) {
  const shelves = useMemo(() => shelvesOf(subject), [subject]);
  const options = useMemo(() => stashOptions(subject.book), [subject.book]);
  return (
    <section aria-labelledby="spine" className={styles.spine}>
      <h2 id="spine" className="visually-hidden">
        {remakeWords.tabs["stand-ins"]}
      </h2>
      <div className={styles.head} aria-hidden="true">
        <span className={styles.headKit}>{words.inKit}</span>
        <span className={styles.headMine}>
          {words.mine}{" "}
          <span className={styles.key}>
            <kbd>{words.nextKey}</kbd> {words.nextBest}
          </span>
        </span>
        <span className={styles.headNear}>{words.howNear}</span>
      </div>
      <ol>
        {rows.map((row) => {
          const line = shelves.line(row.line);
          const lineMatch = match.lines.find((one) => one.line === row.line);
          return (
            line &&
            lineMatch && (
              <PairRow
                key={row.line}
                row={row}
                line={line}
                match={lineMatch}
                shelves={shelves}
                options={options}
                acts={acts}
                isWashed={washed.has(row.line)}
                onAct={() => onAct(row.line)}
              />
            )
          );
        })}
      </ol>
    </section>
  );
}
