import { Pair } from "../swatch/index.ts";
import { deskWords } from "../words/desk.ts";
import styles from "./strip.module.css";
import type { StripPair } from "./view/next.ts";

/** The kit's items beside what plays them, each with its number, name and nearness. */
export function Strip({ pairs }: Readonly<{ pairs: readonly StripPair[] }>) {
  return (
    <ol aria-label={deskWords.next.strip} className={styles.strip}>
      {pairs.map((pair) => (
        <li key={pair.key}>
          <Pair kit={pair.kit} standIn={pair.standIn} width={132} height={72} />
          <p className={styles.name}>
            <span className={styles.number}>{pair.number}</span> <b>{pair.name}</b>
          </p>
          <p className={styles.fact}>
            {pair.figure && <span className={styles.figure}>{pair.figure}</span>} {pair.for}
          </p>
        </li>
      ))}
    </ol>
  );
}
