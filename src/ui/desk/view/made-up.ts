import { labOf } from "../../../engine/colour/index.ts";
import { type Covered, coverage } from "../../../engine/match/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { kitTitle, outOfHundred } from "../../remakes/view/solve.ts";
import type { SwatchItem } from "../../swatch/pair.ts";
import { deskWords } from "../../words/desk.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";

const words = deskWords.coverage;

/** A kit that could be made up, and how well. */
export type MadeUpRow = Readonly<{
  id: string;
  name: string;
  facts: readonly string[];
  swatches: readonly SwatchItem[];
  items: string;
  gaps: string;
  weakest: string;
  weakestFigure: string;
  figure: string;
}>;

/** `hidden`: kits that have a remake. `all`: every kit logged. */
export type MadeUpView = Readonly<{ rows: readonly MadeUpRow[]; hidden: number; all: number }>;

const rowsShown = 4;
const swatchesShown = 5;

/** What speaks for a kit besides its nearness: somebody asked for it, or it was received once. */
function factsOf(book: Workbook, kit: Kit, format: Formatter): readonly string[] {
  const asked = (book.requests ?? []).filter((request) => request.kit === kit.id);
  const names = [...new Set(asked.flatMap(({ by }) => (by ? [by] : [])))];
  return [
    words.from(kit.maker, format.month(kit.period)),
    ...(asked.length > 0 ? [names.length > 0 ? words.asked(names) : words.askedSomebody] : []),
    ...(kit.received ? [words.received] : []),
  ];
}

function swatchesOf(kit: Kit): readonly SwatchItem[] {
  const all = (kit.lines ?? []).map(({ id, supply }) => ({ id, supply }));
  const coloured = all.filter(({ supply }) => labOf(supply.colour) !== null);
  return [...coloured, ...all.filter((one) => !coloured.includes(one))].slice(0, swatchesShown);
}

function rowOf(book: Workbook, kit: Kit, covered: Covered, format: Formatter): MadeUpRow {
  const weakest = kit.lines?.find(({ id }) => id === covered.worst?.line);
  return {
    id: kit.id,
    name: kitTitle(kit),
    facts: factsOf(book, kit, format),
    swatches: swatchesOf(kit),
    items: format.count(kit.lines?.length ?? 0),
    gaps: words.gapCount(covered.gaps),
    weakest: weakest?.supply.name ?? "",
    weakestFigure: weakest ? format.count(outOfHundred(covered.worst?.likeness ?? 0)) : "",
    figure: format.count(outOfHundred(covered.meanLikeness)),
  };
}

/** The kits that the stash would make up best, of those without a remake. */
export function madeUpView(book: Workbook, format: Formatter = ownFormat): MadeUpView {
  const remade = new Set((book.remakes ?? []).map(({ kit }) => kit));
  const kits = (book.kits ?? []).filter(({ lines }) => (lines ?? []).length > 0);
  const open = kits.filter(({ id }) => !remade.has(id));
  const byId = new Map(open.map((kit) => [kit.id, kit]));
  const ranked = coverage({
    kits: open,
    stash: book.stash ?? [],
    kinships: book.kinships,
    weights: book.weights,
  });
  return {
    rows: ranked.slice(0, rowsShown).flatMap((covered) => {
      const kit = byId.get(covered.kit);
      return kit ? [rowOf(book, kit, covered, format)] : [];
    }),
    hidden: kits.length - open.length,
    all: book.kits?.length ?? 0,
  };
}
