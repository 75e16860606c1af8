import type { StashItem } from "../../engine/supply/index.ts";
import { ButtonLink } from "../parts/index.ts";
import { Pair, Swatch } from "../swatch/index.ts";
import { findWords } from "../words/find.ts";
import { stashWords } from "../words/stash.ts";
import styles from "./item-facts.module.css";
import { ItemLink } from "./item-link.tsx";
import type { Fact, ItemView, Near } from "./view/item.ts";

const words = stashWords.item;

type Props = Readonly<{ item: StashItem; view: ItemView; titleId: string | null }>;

/** The item drawn large, with its facts and the nearest of the stash. */
export function ItemFacts({ item, view, titleId }: Props) {
  return (
    <div className={styles.room} data-chosen="">
      <div className={styles.facts}>
        <div className={styles.swatch}>
          <Swatch item={item} width={240} height={160} />
        </div>
        <div className={styles.said}>
          {titleId && (
            <h2 id={titleId} tabIndex={-1} className={styles.title}>
              {view.name}
            </h2>
          )}
          {view.facts && <p className={styles.traits}>{view.facts}</p>}
          <dl className={styles.rows}>
            {view.rows.map((row) => (
              <FactRow key={row.label} row={row} />
            ))}
          </dl>
        </div>
        {view.nearest.length > 0 && <Nearest item={item} nearest={view.nearest} level={titleId ? 3 : 2} />}
      </div>
    </div>
  );
}

const FactRow = ({ row }: Readonly<{ row: Fact }>) => (
  <div>
    <dt>{row.label}</dt>
    <dd>
      {row.text} {row.more && <span className={styles.more}>{row.more}</span>}
    </dd>
  </div>
);

type NearestProps = Readonly<{ item: StashItem; nearest: readonly Near[]; level: 2 | 3 }>;

function Nearest({ item, nearest, level }: NearestProps) {
  const Head = level === 2 ? "h2" : "h3";
  return (
    <div className={styles.nearest}>
      <Head className={styles.nearHead}>{words.nearest}</Head>
      <ul>
        {nearest.map((near) => (
          <li key={near.item.id}>
            <ItemLink id={near.item.id} stays className={styles.near}>
              <Pair kit={item} standIn={near.item} width={96} height={32} />
              <span>
                <span className={styles.nearName}>{near.name}</span>
                <span className={styles.apart}>{near.text}</span>
              </span>
            </ItemLink>
          </li>
        ))}
      </ul>
      <ButtonLink kind="quiet" to={closeTo(item.id)}>
        {findWords.closeTo}
      </ButtonLink>
    </div>
  );
}

/** Everything of the stash that is close to a thing's colour, nearest first. */
const closeTo = (id: string): string => `/stash?${new URLSearchParams({ near: id })}`;
