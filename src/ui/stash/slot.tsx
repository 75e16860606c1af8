import { memo } from "react";
import { classes } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./slot.module.css";
import type { Slot } from "./view/by-colour.ts";

type Props = Readonly<{
  slot: Slot;
  chosen: boolean;
  /** Whether the Tab key stops here. */
  stop: boolean;
}>;

/** One thing of the layout: its swatch, or a dot in its place where it does not fit what is asked. */
export const SlotView = memo(
  function SlotView({ slot, chosen, stop }: Props) {
    const { item, fits, hex, name, more, figure } = slot;
    return (
      <ItemLink
        id={item.id}
        stays
        out={!fits}
        data-slot={item.id}
        tabIndex={stop ? 0 : -1}
        aria-current={chosen ? "true" : undefined}
        className={classes(styles.slot, !fits && styles.out)}
      >
        <span className={styles.swatch}>
          <Swatch item={item} width={44} height={30} />
        </span>
        <span className={styles.dot} style={hex === null ? undefined : { backgroundColor: hex }} />
        <span className={styles.name}>
          <b>{name}</b> <span className={styles.more}>{[more, figure].filter(Boolean).join(", ")}</span>
        </span>
      </ItemLink>
    );
  },
  (a, b) =>
    a.chosen === b.chosen &&
    a.stop === b.stop &&
    a.slot.item === b.slot.item &&
    a.slot.fits === b.slot.fits &&
    a.slot.more === b.slot.more,
);
