import { Swatch } from "../swatch/index.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./ladder.module.css";
import type { Slot } from "./view/by-colour.ts";

/** Things one below the other, as a phone shows them: swatch, name, what goes with it. */
export const Rungs = ({ slots }: Readonly<{ slots: readonly Slot[] }>) => (
  <ul>
    {slots.map((slot) => (
      <li key={slot.item.id}>
        <ItemLink id={slot.item.id} stays={false} className={styles.rung}>
          <Swatch item={slot.item} width={62} height={44} />
          <span>
            <span className={styles.name}>{slot.name}</span>
            <span className={styles.more}>{[slot.more, slot.figure].filter(Boolean).join(", ")}</span>
          </span>
        </ItemLink>
      </li>
    ))}
  </ul>
);
