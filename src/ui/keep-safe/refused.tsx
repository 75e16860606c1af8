import type { Fault as Wrong } from "../../engine/record/index.ts";
import { Fault } from "../parts/index.ts";
import { faultIn } from "../words/faults.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";

const words = keepSafeWords.restore;

type Props = Readonly<{ name: string; faults: readonly Wrong[] }>;

/** Why a file was refused: every fault at its place, in a list that scrolls by itself. */
export function Refused({ name, faults }: Props) {
  return (
    <div className={styles.refused}>
      <Fault title={words.refused(name)}>
        <p>{words.refusedText(faults.length)}</p>
      </Fault>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className={styles.scrolls} tabIndex={0} aria-label={words.faults}>
        <ol>
          {faults.map(faultIn).map(({ place, problem, remedy }) => (
            <li key={`${place} ${problem}`} className={styles.wrong}>
              <code className={styles.place}>{place}</code>
              <span>
                {upper(problem)}. {words.remedy(remedy)}
              </span>
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}

const upper = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
