import { Tick } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { Subject } from "../view/solve.ts";
import styles from "./ways.module.css";

const words = remakeWords.standIns;

/** In a kit once received: what that means, and the switch for twins. */
export function Rules({ subject, acts }: Readonly<{ subject: Subject; acts: StandInActs }>) {
  const { kit, remake } = subject;
  if (!kit.received) return null;
  const twins = remake.rules?.twins ?? false;
  return (
    <div className={styles.rules}>
      <p>{twins ? words.receivedTwins : words.received}</p>
      <Tick label={words.twins} more={words.twinsMore} value={twins} onValue={(on) => void acts.twins(on)} />
    </div>
  );
}
