import type { StashItem } from "../../../engine/supply/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { ItemLink } from "../item-link.tsx";
import styles from "./tidy.module.css";

type Props = Readonly<{
  items: readonly StashItem[];
  swatch: Readonly<{ width: number; height: number }>;
  /** What is said of each beside its name; what is empty is left out. */
  facts: (item: StashItem) => readonly (string | null | undefined)[];
}>;

/** The things of a group, each with what tells it from the others. */
export const Things = ({ items, swatch, facts }: Props) => (
  <ul className={styles.things}>
    {items.map((item) => (
      <li key={item.id}>
        <ItemLink id={item.id} stays={false} className={styles.thing}>
          <Swatch item={item} {...swatch} />
          <span>
            {item.supply.name}
            <span className={styles.more}>{facts(item).filter(Boolean).join(", ")}</span>
          </span>
        </ItemLink>
      </li>
    ))}
  </ul>
);
