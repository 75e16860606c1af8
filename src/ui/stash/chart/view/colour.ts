import {
  type CellReading,
  type Colour,
  deltaE2000,
  hexFromLab,
  type Lab,
  labOf,
} from "../../../../engine/colour/index.ts";
import { isGuessedColour } from "../../../../engine/supply/index.ts";
import { chartWords as words } from "../../../words/chart.ts";
import { missWords } from "../../../words/engine/colour.ts";
import { format } from "../../../words/index.ts";

export type Before = Colour | null | undefined;

/**
 * Which colour a thing has afterwards: the measured one; what was seen of a doubtful swatch, when a person says so;
 * or the one it has, if any.
 */
export type Use = "measured" | "seen" | "before";

/** Whether anybody ever said or measured this colour: one that its name brings to mind is no knowledge. */
const isKnown = (before: Before): boolean => labOf(before) !== null && !isGuessedColour(before);

/** What can be chosen for a swatch, the first being what is right for most. */
export function usesOf({ lab, seen, doubts }: CellReading): readonly Use[] {
  if (lab) return ["measured", "before"];
  return seen && !doubts.includes("empty") ? ["before", "seen"] : ["before"];
}

/** Past this ΔE00 a swatch more likely stands for another thing than that its typed colour was so wrong; ours. */
const farOff = 20;

const isFarOff = (cell: CellReading, before: Before): boolean => {
  const typed = labOf(before);
  return cell.lab !== null && typed !== null && isKnown(before) && deltaE2000(typed, cell.lab) > farOff;
};

/** What is chosen until a person says otherwise: a doubtful colour, and one far off what was typed, is not taken. */
export const firstUse = (cell: CellReading, before: Before): Use =>
  cell.lab && !isFarOff(cell, before) ? "measured" : "before";

/** What a choice is called, by what the thing has already. */
export function useText(use: Use, before: Before): string {
  if (use !== "before") return words.uses[use];
  if (!labOf(before)) return words.uses.none;
  return before?.from === "measured" || isGuessedColour(before) ? words.uses.kept : words.uses.typed;
}

const rounded = (value: number, steps: number): number => Math.round(value * steps) / steps || 0;

/**
 * The colour as it is kept: CIELAB under D65, with how evenly the swatch had it and how far to rely on it. Its name
 * stays, and what others wrote of it; a typed hex would contradict it.
 */
function measuredColour(lab: Lab, { spread, certainty }: CellReading, before: Before): Colour {
  const { hex: _, ...rest } = before ?? {};
  return {
    ...rest,
    lab: [rounded(lab.l, 100), rounded(lab.a, 100), rounded(lab.b, 100)],
    white: "D65",
    from: "measured",
    spread: spread === null ? null : rounded(spread, 10),
    certainty: rounded(certainty, 100),
  };
}

/** The colour that a choice comes to; undefined where it changes nothing. */
export function colourBy(use: Use, cell: CellReading, before: Before): Colour | undefined {
  const lab = use === "measured" ? cell.lab : use === "seen" ? cell.seen : null;
  return lab ? measuredColour(lab, cell, before) : undefined;
}

/** How evenly a swatch has its colour. Below 1 nobody sees it vary. */
export const spreadText = (spread: number): string =>
  spread < 1 ? words.even : words.varies(format.number(spread));

const figure = (value: number): string => format.number(Math.round(value) || 0);

/** A colour in figures, and how evenly it was seen. */
export function figuresOf(lab: Lab, spread: number | null): string {
  const parts = [hexFromLab(lab), words.lab(figure(lab.l), figure(lab.a), figure(lab.b))];
  return [...parts, ...(spread === null ? [] : [spreadText(spread)])].join(" · ");
}

/** How near two colours are, 0 to 100: halved for each 12 ΔE00 between them, as colour counts in likeness. */
const nearOf = (deltaE: number): number => Math.round(100 * 2 ** (-deltaE / 12));

/** How a measured colour differs from the one known already. */
export type Compared = Readonly<{ said: string; figures: string; isFarOff: boolean }>;

/** @returns null where there is nothing to compare: no colour before, or only one guessed from its name */
export function compared(cell: CellReading, before: Before): Compared | null {
  const known = isKnown(before) ? labOf(before) : null;
  const lab = cell.lab ?? cell.seen;
  if (!known || !lab) return null;
  const deltaE = deltaE2000(known, lab);
  const say = before?.from === "measured" ? words.besideMeasured : words.beside;
  return {
    said: say(deltaE < 1 ? [] : missWords(known, lab)),
    figures: words.besideFigures(format.number(deltaE, 1, true), format.count(nearOf(deltaE))),
    isFarOff: isFarOff(cell, before),
  };
}
