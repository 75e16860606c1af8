import type { Line } from "../../../engine/price/index.ts";
import { Button } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { OtherView } from "../view/opened.ts";
import styles from "./opened-row.module.css";

const words = remakeWords.standIns;

/** Somebody else for the part: swatch, name, why or why not, figure, and the act. */
export function Other({ other, line, acts }: Readonly<{ other: OtherView; line: Line; acts: StandInActs }>) {
  return (
    <li className={styles.other}>
      <Swatch item={other.item} width={56} height={24} />
      <p>
        {other.name} <span className={styles.facts}>{other.facts}</span>
      </p>
      <p className={styles.facts}>{other.reason}</p>
      <p className={styles.figure}>{other.figure}</p>
      <p className={styles.act}>
        <TakeIt other={other} line={line} acts={acts} />
      </p>
    </li>
  );
}

function TakeIt({ other, line, acts }: Readonly<{ other: OtherView; line: Line; acts: StandInActs }>) {
  if (other.way === "none") return words.notUsed;
  const { leftOut } = other;
  const isBent = leftOut === "acquired-after" || leftOut === "received-before";
  const take = () => (isBent ? acts.takeBending(line, other.item, leftOut) : acts.take(line, other.item.id));
  return (
    <Button kind="quiet" onClick={() => void take()}>
      {isBent ? words.useBent : words.use}
      <span className="visually-hidden">{words.takeNamed(other.name)}</span>
    </Button>
  );
}
