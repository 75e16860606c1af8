import type { Line } from "../../../engine/price/index.ts";
import { Button } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { RowView, StandInView } from "../view/rows.ts";
import styles from "./rows.module.css";

const words = remakeWords.standIns;

type Props = Readonly<{ row: RowView; line: Line; acts: StandInActs; onPickAnyway: () => void }>;

/** The stash's side of a row: what stands in and why, what would be next; or nothing, and what to do about it. */
export function Mine({ row, line, acts, onPickAnyway }: Props) {
  return (
    <div className={styles.mine}>
      {row.standIn ? <Filled standIn={row.standIn} /> : <Bare row={row} />}
      <Acts row={row} line={line} acts={acts} onPickAnyway={onPickAnyway} />
    </div>
  );
}

function Filled({ standIn }: Readonly<{ standIn: StandInView }>) {
  return (
    <>
      <p className={styles.name}>{standIn.name}</p>
      <p className={styles.facts}>{standIn.facts}</p>
      {standIn.reasons.map((reason) => (
        <p key={reason} className={styles.reason}>
          {reason}
        </p>
      ))}
    </>
  );
}

const Bare = ({ row }: Readonly<{ row: RowView }>) => (
  <>
    <p className={styles.name}>{row.state === "gap" ? words.nothingClose : words.leftOut}</p>
    <p className={styles.facts}>{row.state === "gap" ? row.gapWhy : words.leftOutFact}</p>
  </>
);

function Acts({ row, line, acts, onPickAnyway }: Props) {
  const { next } = row;
  return (
    <>
      <p className={styles.next}>
        {next && (
          <>
            <span>{next.text}</span>
            <Button key="swap" kind="quiet" onClick={() => void acts.take(line, next.stash)}>
              {words.swap}
              <span className="visually-hidden">{words.swapFor(row.name)}</span>
            </Button>
          </>
        )}
        {row.state === "gap" && (
          <Button kind="quiet" onClick={() => void acts.leaveOut(line)}>
            {words.leaveOut}
            <span className="visually-hidden">{words.swapFor(row.name)}</span>
          </Button>
        )}
        {row.state !== "filled" && (
          <Button kind="quiet" onClick={onPickAnyway}>
            {words.pickAnyway}
            <span className="visually-hidden">{words.swapFor(row.name)}</span>
          </Button>
        )}
      </p>
      {row.isOwn && (
        <p className={styles.next}>
          {row.state === "filled" && <span>{words.yours}</span>}
          <Button kind="quiet" onClick={() => void acts.again(line)}>
            {words.chooseAgain}
            <span className="visually-hidden">{words.swapFor(row.name)}</span>
          </Button>
        </p>
      )}
    </>
  );
}
