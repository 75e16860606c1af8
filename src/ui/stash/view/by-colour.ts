import {
  type HueGroup,
  hexFromLab,
  hueGroups,
  type LightnessBand,
  lchOf,
  lightnessBands,
} from "../../../engine/colour/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { stashWords as words } from "../../words/stash.ts";
import type { Found } from "./find.ts";
import { type Colouring, type Known, placeOf } from "./known.ts";

/** One thing in its place of the layout. What does not fit the search keeps its place, as a dot. */
export type Slot = Readonly<{
  item: StashItem;
  fits: boolean;
  /** Of the dot. */
  hex: string | null;
  name: string;
  /** "muted yellow-green, blue tin": what goes with the name. */
  more: string;
  /** "L 46"; empty without a colour. */
  figure: string;
}>;

/** One hue at one lightness. `more`: how many are folded away. */
export type Cell = Readonly<{ hue: HueGroup; band: LightnessBand; slots: readonly Slot[]; more: number }>;

export type Layout = Readonly<{
  cells: readonly (readonly Cell[])[];
  rest: Readonly<{ slots: readonly Slot[]; more: number }>;
}>;

/** In a cell lightest first; of one lightness by hue, so that neighbours look alike. */
const byLook = (a: Colouring, b: Colouring): number => b.lab.l - a.lab.l || lchOf(a.lab).h - lchOf(b.lab).h;

function slotOf({ item, colour, facts }: Known, found: Found): Slot {
  const apart = found.apart?.get(item.id);
  const more = [
    colour?.said ?? facts,
    placeOf(item),
    apart === undefined ? "" : words.apart(apart.toFixed(1)),
  ];
  return {
    item,
    fits: found.ids.has(item.id),
    hex: colour && hexFromLab(colour.lab),
    name: item.supply.name,
    more: more.filter((part) => part !== "").join(", "),
    figure: colour ? words.lightnessOf(colour.lab.l.toFixed(0)) : "",
  };
}

/** At most `limit` of the slots: those that fit come first when some have to be folded away. */
function shown(slots: readonly Slot[], limit: number): Readonly<{ slots: readonly Slot[]; more: number }> {
  if (slots.length <= limit) return { slots, more: 0 };
  const kept = new Set(
    [...slots.filter(({ fits }) => fits), ...slots.filter(({ fits }) => !fits)].slice(0, limit),
  );
  return { slots: slots.filter((slot) => kept.has(slot)), more: slots.length - limit };
}

/**
 * The stash laid out: hue columns by lightness rows, and the rest that has no colour.
 * @param limit how many one cell shows at most; `opened` cells, by `cellKey`, show all
 */
export function layoutOf(
  stash: readonly Known[],
  found: Found,
  limit: number,
  opened: ReadonlySet<string> = new Set(),
): Layout {
  const coloured = new Map<string, Known[]>();
  for (const known of stash) {
    const key = known.colour ? cellKey(known.colour.hue, known.colour.band) : "rest";
    coloured.set(key, [...(coloured.get(key) ?? []), known]);
  }
  const slotsIn = (key: string) =>
    shown(
      (coloured.get(key) ?? [])
        .toSorted((a, b) => (a.colour && b.colour ? byLook(a.colour, b.colour) : 0))
        .map((known) => slotOf(known, found)),
      opened.has(key) ? Number.POSITIVE_INFINITY : limit,
    );
  return {
    cells: lightnessBands.map((band) =>
      hueGroups.map((hue) => ({ hue, band, ...slotsIn(cellKey(hue, band)) })),
    ),
    rest: slotsIn("rest"),
  };
}

export const cellKey = (hue: HueGroup, band: LightnessBand): string => `${hue} ${band}`;

/** How many fit in each hue, for choosing one on a phone. */
export function hueCounts(layout: Layout): ReadonlyMap<HueGroup, number> {
  const fits = (hue: HueGroup) =>
    layout.cells
      .flat()
      .filter((cell) => cell.hue === hue)
      .flatMap(({ slots }) => slots)
      .filter((slot) => slot.fits);
  return new Map(hueGroups.map((hue) => [hue, fits(hue).length]));
}
