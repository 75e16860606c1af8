import type { Language } from "../record/index.ts";
import { type Family, type KnownNames, type LineReading, readLine, type Supply } from "../supply/index.ts";
import type { Field } from "./fields.ts";
import { type Cell, cellText } from "./table.ts";

/** A word that tells a family to the reader of lines, whatever language it reads in. */
const wordOf: Readonly<Record<Family, string>> = {
  marker: "marker",
  liner: "liner",
  graphite: "graphite",
  "colour-pencil": "coloured pencil",
  paint: "paint",
  ink: "ink",
  pastel: "pastel",
  brush: "paintbrush",
  eraser: "eraser",
  paper: "paper",
  tool: "",
  other: "",
};

const units: Readonly<Partial<Record<Field, string>>> = {
  gsm: "gsm",
  ml: "ml",
  width: "mm",
  sheets: "sheets",
};

/** A trait's cell as the reader of lines takes it: a bare number gets the unit of its column. */
export function spelledOut(field: Field, cell: Cell): string {
  const text = cellText(cell);
  const unit = units[field];
  return unit && /^\d[\d.,]*$/.test(text) ? `${text} ${unit}` : text;
}

/** What a text was read as. `understood`: it tells a trait of the family that it is about. */
export type Told = Readonly<{ text: string; supply: Supply; qty: number; understood: boolean }>;

/** Readings that were made already: kinds and sizes repeat all through a list. */
const mostKept = 4_000;

/** The reader of one list. */
export function describer(known: KnownNames, language: Language) {
  const kept = new Map<string, LineReading>();

  /** A text as a line of its own; one that hardly comes twice is not kept in mind. */
  function read(text: string, comesOnce = false): LineReading {
    const before = kept.get(text);
    if (before) return before;
    const reading = readLine(text, known, language);
    if (comesOnce) return reading;
    if (kept.size >= mostKept) kept.clear();
    kept.set(text, reading);
    return reading;
  }

  /** A text about something of a family. */
  function about(family: Family, text: string, comesOnce = false): Told {
    const word = wordOf[family];
    const { supply, qty, pieces } = read(word === "" ? text : `${word} ${text}`, comesOnce);
    const start = word === "" ? 0 : word.length + 1;
    const tells = pieces.some(({ end, field }) => end > start && field.startsWith("traits."));
    return { text, supply, qty, understood: supply.family === family && tells };
  }

  return { read, about };
}

export type Describer = ReturnType<typeof describer>;
