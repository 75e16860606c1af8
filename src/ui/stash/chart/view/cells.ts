import type { CellReading, ChartReading, Colour } from "../../../../engine/colour/index.ts";
import type { StashItem, Supply } from "../../../../engine/supply/index.ts";
import { chartWords as words } from "../../../words/chart.ts";
import { format } from "../../../words/index.ts";
import { factsText } from "../../view/known.ts";
import {
  type Compared,
  colourBy,
  compared,
  figuresOf,
  firstUse,
  type Use,
  usesOf,
  useText,
} from "./colour.ts";

/** What a swatch stands for: a thing of the stash, a new one, or nothing said yet. */
export type Stands =
  | Readonly<{ kind: "stash"; item: StashItem }>
  | Readonly<{ kind: "fresh"; supply: Supply }>
  | null;

/** A swatch as it was read, what it stands for, and what becomes of it. */
export type Cell = Readonly<{
  at: number;
  cell: CellReading;
  stands: Stands;
  use: Use;
  /** The colour the thing gets; undefined where it keeps what it has. */
  colour: Colour | undefined;
}>;

export const supplyOf = (stands: Stands): Supply | null =>
  stands === null ? null : stands.kind === "stash" ? stands.item.supply : stands.supply;

/** Each swatch with what it stands for and the choice made for it; a choice that it does not offer falls back. */
export const cellsOf = (
  cells: readonly CellReading[],
  stands: readonly Stands[],
  uses: ReadonlyMap<number, Use>,
): readonly Cell[] =>
  cells.map((cell, at) => {
    const one = stands[at] ?? null;
    const before = supplyOf(one)?.colour;
    const chosen = uses.get(at);
    const use = chosen && usesOf(cell).includes(chosen) ? chosen : firstUse(cell, before);
    return { at, cell, stands: one, use, colour: one ? colourBy(use, cell, before) : undefined };
  });

/** A swatch, ready to print. */
export type CellView = Readonly<{
  at: number;
  number: string;
  place: string;
  /** What is drawn: the thing in the colour seen, or a plain one where nothing is said of it; null is a blank. */
  drawn: Supply | null;
  name: string | null;
  facts: string;
  /** The colour in figures, or why there is none. */
  figures: string;
  isDoubtful: boolean;
  compared: Compared | null;
  use: Use;
  uses: readonly Readonly<{ value: Use; label: string }>[];
}>;

const plain: Supply = { family: "paint", name: "" };

function drawnOf({ cell, stands, use }: Cell): Supply | null {
  const seen = cell.lab ?? (use === "seen" ? cell.seen : null);
  return seen && { ...(supplyOf(stands) ?? plain), colour: { lab: [seen.l, seen.a, seen.b], white: "D65" } };
}

export function cellView(one: Cell): CellView {
  const { at, cell, stands, use } = one;
  const supply = supplyOf(stands);
  const doubts = cell.doubts.map((doubt) => words.doubts[doubt]);
  const uses = supply ? usesOf(cell) : [];
  return {
    at,
    number: format.count(at + 1),
    place: words.place(format.count(cell.row + 1), format.count(cell.column + 1)),
    drawn: drawnOf(one),
    name: supply?.name ?? null,
    facts: supply ? factsText(supply) : "",
    figures: cell.lab ? figuresOf(cell.lab, cell.spread) : words.noColour(doubts),
    isDoubtful: cell.lab === null,
    compared: supply ? compared(cell, supply.colour) : null,
    use,
    // One way leads nowhere else: there is nothing to choose.
    uses: uses.length < 2 ? [] : uses.map((value) => ({ value, label: useText(value, supply?.colour) })),
  };
}

/** What is kept when told to: colours of things of the stash, and new things with theirs. */
export type Kept = Readonly<{
  changed: readonly Readonly<{ item: StashItem; colour: Colour }>[];
  added: readonly Supply[];
}>;

/** @param but the swatches that do not count, since their thing stands at a later one again */
export function keptOf(cells: readonly Cell[], but: ReadonlySet<number>): Kept {
  return {
    changed: cells.flatMap(({ at, stands, colour }) =>
      stands?.kind === "stash" && colour && !but.has(at) ? [{ item: stands.item, colour }] : [],
    ),
    // A place of the chart where nothing was painted is no new thing.
    added: cells.flatMap(({ stands, cell, colour }) =>
      stands?.kind === "fresh" && !cell.doubts.includes("empty")
        ? [colour ? { ...stands.supply, colour } : stands.supply]
        : [],
    ),
  };
}

/** What the light was and what the reading came to, in sentences. */
export function readingText({ cells, light }: ChartReading): Readonly<{ title: string; more: string }> {
  const doubtful = cells.filter(({ lab }) => lab === null).length;
  const count = (value: number) => format.count(value);
  const tint =
    Math.hypot(light.paper.a, light.paper.b) < 4 ? [] : ([light.paper.b > 0 ? "warm" : "cool"] as const);
  return {
    title: words.result(count(cells.length - doubtful), count(cells.length), cells.length === 1),
    more: [
      ...(doubtful > 0 ? [words.doubtful(count(doubtful), doubtful === 1)] : []),
      light.ratio < 1.15 ? words.light.even : words.light.uneven(format.number(light.ratio, 1)),
      ...tint.map((one) => words.light[one]),
      ...(light.between ? [] : [words.light.around]),
    ].join(" "),
  };
}
