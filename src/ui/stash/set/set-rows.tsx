import { useState } from "react";
import { Button } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { format } from "../../words/index.ts";
import { setWords as words } from "../../words/set.ts";
import { stashWords } from "../../words/stash.ts";
import styles from "./set.module.css";
import type { SetRow } from "./view/rows.ts";

type Props = Readonly<{ rows: readonly SetRow[]; onOut: (place: number) => void }>;

/** How many are drawn at first: a set has dozens, now and then hundreds. */
const first = 60;

/** The colours of the set, each drawn as it was understood. */
export function SetRows({ rows, onOut }: Props) {
  const [all, setAll] = useState(false);
  const drawn = all ? rows : rows.slice(0, first);
  return (
    <>
      <ol className={styles.rows}>
        {drawn.map(({ place, supply, facts, not }) => (
          <li key={place} className={styles.row}>
            <Swatch item={{ id: `set ${place}`, supply }} width={88} height={44} />
            <p>
              <strong>{supply.name || words.unnamed}</strong>
              <span className={styles.facts}>{not ?? facts}</span>
            </p>
            {not === null && (
              <Button
                kind="quiet"
                aria-label={words.takeOutNamed(supply.name || words.unnamed)}
                onClick={() => onOut(place)}
              >
                {words.takeOut}
              </Button>
            )}
          </li>
        ))}
      </ol>
      {drawn.length < rows.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {stashWords.moreRows(format.count(rows.length - drawn.length))}
        </Button>
      )}
    </>
  );
}
