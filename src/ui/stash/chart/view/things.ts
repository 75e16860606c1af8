import { readColourSet, type SetColour } from "../../../../engine/intake/index.ts";
import type { StashItem, Supply } from "../../../../engine/supply/index.ts";
import { chartWords as words } from "../../../words/chart.ts";
import { format } from "../../../words/index.ts";
import { leavesColour } from "../../print/view/chart.ts";
import { type ChartOrder, inChartOrder } from "../../print/view/order.ts";
import { anything } from "../../view/asked.ts";
import { findIn } from "../../view/find.ts";
import type { Known } from "../../view/known.ts";

/**
 * What of the stash fits the words asked, in the order that the swatches take it, as a printed chart has it; none while
 * nothing is asked. What leaves no colour stands on no chart.
 */
export function thingsFound(stash: readonly Known[], text: string, order: ChartOrder): readonly StashItem[] {
  if (text.trim() === "") return [];
  const { ids } = findIn(stash, { ...anything, text });
  const found = stash.flatMap(({ item }) => (ids.has(item.id) ? [item] : []));
  return inChartOrder(found.filter(leavesColour), order);
}

/** Which of the things found the first swatch is, as typed: a second sheet begins where the first left off. */
export const startIn = (text: string): number =>
  /^\s*\d{1,5}\s*$/.test(text) ? Math.max(1, Number(text)) : 1;

/** What the swatches take of what was found, as one sentence or two. */
export function foundText(found: number, cells: number): string {
  if (found === 0) return words.foundNone;
  const all = words.swatches(format.count(cells), cells === 1);
  const more = found > cells ? [words.foundMore] : found < cells ? [words.foundLess] : [];
  return [`${words.found(format.count(found), all, found === 1)}.`, ...more].join(" ");
}

/** The thing of each swatch, in reading order: those found, but for what was chosen for one; null is none. */
export const thingsAt = (
  count: number,
  found: readonly StashItem[],
  chosen: ReadonlyMap<number, StashItem | null>,
): readonly (StashItem | null)[] =>
  Array.from({ length: count }, (_, at) => {
    const own = chosen.get(at);
    return own === undefined ? (found[at] ?? null) : own;
  });

/** The swatches whose thing stands at a later one again: only the last of them can count. */
export function earlierTwice(things: readonly (StashItem | null)[]): ReadonlySet<number> {
  const last = new Map(things.flatMap((thing, at) => (thing ? [[thing.id, at] as const] : [])));
  return new Set(things.flatMap((thing, at) => (thing && last.get(thing.id) !== at ? [at] : [])));
}

/** The names as they stand line by line; a line left empty is a swatch without a name. */
const named = (names: string): readonly (SetColour | null)[] =>
  names.split(/\r\n|\n|\r/).map((line) => readColourSet(line)[0] ?? null);

function freshOne(base: Supply, said: SetColour | null, number: string): Supply {
  const { colour: _, ...rest } = base;
  const name = said?.name ?? (said?.code ? null : number);
  return {
    ...rest,
    name: [base.name, name].filter(Boolean).join(", "),
    ...(said?.code ? { code: said.code } : {}),
    ...(said?.colour ? { colour: said.colour } : {}),
  };
}

/**
 * A new thing for each swatch: what they all are, with its own name and number, or the swatch's number where it has
 * neither. Colours that are written beside the names are there to be compared.
 */
export function freshThings(base: Supply, names: string, count: number): readonly Supply[] {
  const said = named(names);
  return Array.from({ length: count }, (_, at) => freshOne(base, said[at] ?? null, format.count(at + 1)));
}
