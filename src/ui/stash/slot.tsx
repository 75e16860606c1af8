import { memo } from "react";
import { classes } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { choose, useChoosing } from "./choosing.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./slot.module.css";
import type { Slot } from "./view/by-colour.ts";

type Props = Readonly<{
  slot: Slot;
  chosen: boolean;
  /** Whether the Tab key stops here. */
  stop: boolean;
  /** Whether several things are being chosen, so that a press chooses it instead of opening it. */
  choosing: boolean;
}>;

/** One thing of the layout: its swatch, or a dot in its place where it does not fit what is asked. */
export const SlotView = memo(
  function SlotView({ slot, chosen, stop, choosing }: Props) {
    const { item, fits } = slot;
    if (choosing && fits) return <Pickable slot={slot} stop={stop} />;
    return (
      <ItemLink
        id={item.id}
        stays
        out={!fits}
        data-slot={item.id}
        tabIndex={stop ? 0 : -1}
        aria-label={saidOf(slot)}
        aria-current={chosen ? "true" : undefined}
        className={classes(styles.slot, !fits && styles.out)}
      >
        <Shown slot={slot} />
      </ItemLink>
    );
  },
  (a, b) =>
    a.chosen === b.chosen &&
    a.stop === b.stop &&
    a.choosing === b.choosing &&
    a.slot.item === b.slot.item &&
    a.slot.fits === b.slot.fits &&
    a.slot.more === b.slot.more,
);

/** The same, to be ticked. */
function Pickable({ slot, stop }: Pick<Props, "slot" | "stop">) {
  const { id } = slot.item;
  const picked = useChoosing(({ ids }) => ids.has(id));
  return (
    // biome-ignore lint/a11y/useSemanticElements: what is ticked is the swatch itself
    <button
      type="button"
      role="checkbox"
      aria-checked={picked}
      aria-label={saidOf(slot)}
      data-slot={id}
      tabIndex={stop ? 0 : -1}
      className={classes(styles.slot, styles.pickable)}
      onClick={(event) => choose(id, event.shiftKey)}
    >
      <Shown slot={slot} />
    </button>
  );
}

/** Its name and what goes with it, as the link is read out. */
const saidOf = ({ name, more, figure }: Slot): string => [name, more, figure].filter(Boolean).join(", ");

const Shown = ({ slot: { item, hex, name, more, figure } }: Pick<Props, "slot">) => (
  <>
    <span className={styles.swatch}>
      <Swatch item={item} width={44} height={30} />
    </span>
    <span className={styles.dot} style={hex === null ? undefined : { backgroundColor: hex }} />
    <span className={styles.name}>
      <b>{name}</b> <span className={styles.more}>{[more, figure].filter(Boolean).join(", ")}</span>
    </span>
  </>
);
