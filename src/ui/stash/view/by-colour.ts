import {
  type HueGroup,
  hexFromLab,
  hueGroups,
  type LightnessBand,
  lchOf,
  lightnessBands,
} from "../../../engine/colour/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { format } from "../../words/index.ts";
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
export type Cell = Readonly<{ hue: HueGroup; band: LightnessBand }> & Shown;

/** What is drawn of a cell: `more` are folded away, `fitting` is how many fit in all. */
export type Shown = Readonly<{ slots: readonly Slot[]; more: number; fitting: number }>;

export type Layout = Readonly<{ cells: readonly (readonly Cell[])[]; rest: Shown }>;

/** In a cell lightest first; of one lightness by hue, so that neighbours look alike. */
const byLook = (a: Colouring, b: Colouring): number => b.lab.l - a.lab.l || lchOf(a.lab).h - lchOf(b.lab).h;

/** Where everything lies stays the same through every search. */
const laid = new WeakMap<readonly Known[], ReadonlyMap<string, readonly Known[]>>();

function cellsOf(stash: readonly Known[]): ReadonlyMap<string, readonly Known[]> {
  const cells = laid.get(stash) ?? byCell(stash);
  laid.set(stash, cells);
  return cells;
}

function slotOf({ item, colour, facts }: Known, found: Found): Slot {
  const apart = found.apart?.get(item.id);
  const more = [
    colour?.said ?? facts,
    placeOf(item),
    apart === undefined ? "" : words.apart(format.number(apart, 1, true)),
  ];
  return {
    item,
    fits: found.ids.has(item.id),
    hex: colour && hexFromLab(colour.lab),
    name: item.supply.name,
    more: more.filter((part) => part !== "").join(", "),
    figure: colour ? words.lightnessOf(format.number(colour.lab.l)) : "",
  };
}

/** At most `limit` of the items: those that fit come first when some have to be folded away. */
function shown(items: readonly Known[], found: Found, limit: number): Shown {
  const fits = ({ item }: Known) => found.ids.has(item.id);
  const fitting = items.filter(fits);
  const others = fitting.length < limit ? items.filter((known) => !fits(known)) : [];
  const kept = new Set([...fitting, ...others].slice(0, limit));
  return {
    slots: items.filter((known) => kept.has(known)).map((known) => slotOf(known, found)),
    more: items.length - kept.size,
    fitting: fitting.length,
  };
}

/** The stash by cell, each cell in the order of its looks; what has no colour as it stands in the stash. */
function byCell(stash: readonly Known[]): ReadonlyMap<string, readonly Known[]> {
  const cells = new Map<string, Known[]>();
  for (const known of stash) {
    const key = known.colour ? cellKey(known.colour.hue, known.colour.band) : "rest";
    const cell = cells.get(key);
    if (cell) cell.push(known);
    else cells.set(key, [known]);
  }
  const inOrder = (a: Known, b: Known) => (a.colour && b.colour ? byLook(a.colour, b.colour) : 0);
  return new Map([...cells].map(([key, cell]) => [key, cell.toSorted(inOrder)]));
}

/** The rest is one row for all, so it shows more than a cell does. */
const restLimits = 4;

/**
 * The stash laid out: hue columns by lightness rows, and the rest that has no colour.
 * @param limit how many one cell shows at most; `opened` cells, by `cellKey`, show so many more
 */
export function layoutOf(
  stash: readonly Known[],
  found: Found,
  limit: number,
  opened: ReadonlyMap<string, number> = new Map(),
): Layout {
  const cells = cellsOf(stash);
  const cell = (key: string, most: number) =>
    shown(cells.get(key) ?? [], found, most + (opened.get(key) ?? 0));
  return {
    cells: lightnessBands.map((band) =>
      hueGroups.map((hue) => ({ hue, band, ...cell(cellKey(hue, band), limit) })),
    ),
    rest: cell("rest", limit * restLimits),
  };
}

/** What is close to the colour that was typed, nearest first, whatever its hue. */
export function nearestFirst(stash: readonly Known[], found: Found, limit: number): Shown {
  const distance = ({ item }: Known) => found.apart?.get(item.id) ?? Number.POSITIVE_INFINITY;
  const close = stash
    .filter(({ item }) => found.ids.has(item.id))
    .toSorted((a, b) => distance(a) - distance(b));
  return shown(close, found, limit);
}

export const cellKey = (hue: HueGroup, band: LightnessBand): string => `${hue} ${band}`;

/** How many fit in each hue, for choosing one on a phone. */
export function hueCounts({ cells }: Layout): ReadonlyMap<HueGroup, number> {
  const fitting = (hue: HueGroup) =>
    cells
      .flat()
      .filter((cell) => cell.hue === hue)
      .reduce((sum, cell) => sum + cell.fitting, 0);
  return new Map(hueGroups.map((hue) => [hue, fitting(hue)]));
}
