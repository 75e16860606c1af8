import { Link } from "../app/link.tsx";
import { Swatch } from "../swatch/index.ts";
import { format } from "../words/index.ts";
import { kitsWords } from "../words/kits.ts";
import styles from "./kits.module.css";
import type { KitRow } from "./view/kits-list.ts";

const text = kitsWords.list;

/** How many swatches fit beside a name; the words beside them name every line. */
const shown = 8;

/** One kit of the list: its name, its swatches with their names, and how well it could be made up. */
export function KitEntry({ row }: Readonly<{ row: KitRow }>) {
  return (
    <li className={styles.kit}>
      <div className={styles.named}>
        <h2 className={styles.name}>
          <Link to={{ name: "kit", id: row.id, tab: "contents" }}>{row.name}</Link>
        </h2>
        <p className={styles.fact}>{[row.from, ...row.facts].join(" · ")}</p>
      </div>
      <div className={styles.holds}>
        <div className={styles.strip}>
          {row.swatches.slice(0, shown).map((item) => (
            <Swatch key={item.id} item={item} width={44} height={30} />
          ))}
        </div>
        <p className={styles.names}>{row.holds}</p>
      </div>
      <p className={styles.could}>
        {row.figure !== null && (
          <>
            <span className="visually-hidden">{text.could} </span>
            <span className={styles.figure}>{format.count(row.figure)}</span>
            <span className={styles.fact}> {text.ofHundred}</span>
            <span className={styles.gaps}>{row.gaps}</span>
          </>
        )}
      </p>
    </li>
  );
}
