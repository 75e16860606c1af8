import { labOf } from "../../../engine/colour/index.ts";
import type { Candidate, LineMatch, TraceRow } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import { type StashItem, type Supply, sizeWords } from "../../../engine/supply/index.ts";
import { valueWord } from "../../supply-form/view/trait-fields.ts";
import { missWords, plainName } from "../../words/engine/colour.ts";
import { familyLabel, reasonLine, traitLabel } from "../../words/engine/match.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { supplyWords } from "../../words/supply.ts";
import { factsText } from "./facts.ts";
import { outText, wayIn } from "./left-out.ts";
import { outOfHundred, type Shelves } from "./solve.ts";

const words = remakeWords.standIns;

/** Somebody else who could play the part. */
export type OtherView = Readonly<{
  item: StashItem;
  name: string;
  facts: string;
  reason: string;
  figure: string;
  way: "use" | "bend" | "none";
  leftOut: Candidate["leftOut"];
}>;

/** One row of what was compared, ready to print. */
export type ComparedRow = Readonly<{
  key: string;
  what: string;
  kit: string;
  mine: string;
  alike: string;
  counts: string;
}>;

export type OpenedView = Readonly<{
  runnersUp: readonly OtherView[];
  leftOut: readonly OtherView[];
  /** What was compared, and with what: where nothing plays the part, with the nearest. */
  about: string;
  isNearest: boolean;
  compared: readonly ComparedRow[];
  /** The sum in one sentence. */
  sum: string;
}>;

/** Left-out items are worth naming where they would have come close. */
const worthNaming = 0.4;

/** Where nothing comes close, so many are named all the same. */
const namedAnyway = 3;

function otherView(line: Line, shelves: Shelves, candidate: Candidate): OtherView | null {
  const item = shelves.item(candidate.stash);
  if (!item) return null;
  const { leftOut } = candidate;
  return {
    item,
    name: item.supply.name,
    facts: factsText(item.supply),
    reason: leftOut ? words.outLine(outText(leftOut, shelves)) : reasonLine(line.supply, item, candidate),
    figure: format.count(outOfHundred(candidate.likeness)),
    way: leftOut ? wayIn(leftOut) : "use",
    leftOut,
  };
}

const unitOf = (trait: string): string =>
  Object.hasOwn(supplyWords.units, trait) ? (supplyWords.units[trait] ?? "") : "";

const isSize = (value: readonly unknown[]): value is readonly [number, number] =>
  value.length === 2 && value.every((side) => typeof side === "number");

function printed({ family }: Supply, trait: TraceRow["trait"], value: unknown): string {
  if (value === null || value === undefined) return words.compared.unknown;
  if (typeof value === "boolean") return value ? words.compared.yes : words.compared.no;
  if (typeof value === "number") return [format.number(value, 2), unitOf(trait)].filter(Boolean).join(" ");
  if (Array.isArray(value))
    return isSize(value)
      ? sizeWords(value, (n) => format.number(n, 1))
      : value.map((one) => valueWord(family, trait, String(one))).join(", ");
  return valueWord(family, trait, String(value));
}

/** A colour that goes by the same name, told by how it misses: "yellow-green, a little darker". */
function mineText(kit: Supply, mine: Supply, otherwise: string): string {
  const [own, other] = [labOf(kit.colour), labOf(mine.colour)];
  if (!own || !other || plainName(own) !== plainName(other)) return colourText(mine, otherwise);
  return [plainName(other), ...missWords(own, other).slice(0, 1)].join(", ");
}

/** A colour in plain words, so that nobody has to see it. */
const colourText = ({ colour }: Supply, otherwise: string): string => {
  const lab = labOf(colour);
  return lab ? plainName(lab) : otherwise;
};

function comparedRow(kit: Supply, mine: Supply, { trait, ...row }: TraceRow): ComparedRow {
  const [own, other] = [printed(kit, trait, row.kit), printed(mine, trait, row.stash)];
  const isColour = trait === "colour";
  const label = traitLabel(trait);
  return {
    key: trait,
    what: label.slice(0, 1).toUpperCase() + label.slice(1),
    kit: isColour ? colourText(kit, own) : own,
    mine: isColour ? mineText(kit, mine, other) : other,
    alike: format.number(row.similarity, 2, true),
    counts: format.number(row.weight, 1),
  };
}

function knownText(certainty: number): string {
  if (certainty === 1) return words.compared.allKnown;
  return certainty === 0 ? words.compared.noneKnown : words.compared.partKnown(outOfHundred(certainty));
}

/** Gower's similarity of a trace: the weighted mean of its rows. */
function traitsFigure(trace: readonly TraceRow[]): number {
  const weight = trace.reduce((sum, row) => sum + row.weight, 0);
  return weight === 0 ? 0 : trace.reduce((sum, row) => sum + row.weight * row.similarity, 0) / weight;
}

/** "0.76 for the traits, then × 0.70: a marker doing paint's work. All known on both sides." */
export function sumSentence(kit: Supply, mine: Supply, candidate: Candidate): string {
  const { verdict, trace, factor, farFactor, certainty, likeness } = candidate;
  if (verdict === "same") return words.compared.same;
  if (verdict === "twin") return words.compared.twin;
  if (trace.length === 0) return words.compared.nothing;
  const two = (value: number) => format.number(value, 2, true);
  const parts = [
    words.compared.traits(two(traitsFigure(trace))),
    factor < 1 ? words.compared.family(two(factor), familyLabel(mine.family), familyLabel(kit.family)) : "",
    farFactor < 1 ? words.compared.far(two(farFactor)) : "",
    words.compared.comes(outOfHundred(likeness)),
  ];
  return `${parts.filter(Boolean).join(", ")}. ${knownText(certainty)}`;
}

/** What `why?` opens under a row: who else, who not and why, and what was compared. */
export function openedView(line: Line, match: LineMatch, shown: string | null, shelves: Shelves): OpenedView {
  const others = match.candidates.filter(({ stash }) => stash !== shown);
  const runnersUp = others.filter(({ leftOut, likeness }) => leftOut === null && likeness > 0);
  const views = (some: readonly Candidate[]) =>
    some.flatMap((candidate) => otherView(line, shelves, candidate) ?? []);
  // A gap has nobody who was taken: what was compared is then told of the nearest.
  const about = match.candidates.find(({ stash }) => stash === shown) ?? match.candidates[0];
  const item = shelves.item(about?.stash);
  const isTold = about && item && about.verdict !== "same" && about.verdict !== "twin";
  return {
    runnersUp: views(runnersUp.filter(({ verdict }, index) => verdict !== "gap" || index < namedAnyway)),
    leftOut: views(others.filter(({ leftOut, likeness }) => leftOut !== null && likeness >= worthNaming)),
    about: item?.supply.name ?? "",
    isNearest: shown === null && item !== undefined,
    compared: isTold ? about.trace.map((row) => comparedRow(line.supply, item.supply, row)) : [],
    sum: about && item ? sumSentence(line.supply, item.supply, about) : words.gapNone,
  };
}
