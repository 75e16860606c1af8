import type { Colour } from "../../colour/index.ts";
import { parseColour } from "../../colour/index.ts";
import { guessedHex } from "../../supply/index.ts";
import { type Cell, cellText } from "../table.ts";
import type { IntakeWords } from "../words/index.ts";
import { doubtful, type Said, sure, unread } from "./said.ts";

const byte = (text: string | undefined): string => Number(text).toString(16).padStart(2, "0");

/** "rgb(107, 125, 58)" or the three figures alone. */
function fromParts(text: string): string | null {
  const parts = /^(?:rgba?\()?\s*(\d{1,3})\s*[,; ]\s*(\d{1,3})\s*[,; ]\s*(\d{1,3})\s*\)?$/i
    .exec(text)
    ?.slice(1);
  return parts?.every((part) => Number(part) <= 255) ? `#${parts.map(byte).join("")}` : null;
}

const typed = (hex: string): Colour => ({ hex, from: "typed" });

/** A hex that a spreadsheet took for a number: its leading noughts are gone. */
function fromNumber(value: number, words: IntakeWords): Said<Colour> {
  const digits = String(value).padStart(6, "0");
  return /^\d{6}$/.test(digits)
    ? doubtful(typed(`#${digits}`), words.hexRead(`#${digits}`))
    : unread(words.unread(String(value)));
}

/** A colour in figures: hex, `rgb(…)` or `lab(…)`. Null for what is none of these. */
export function readFigures(text: string): Colour | null {
  const parts = fromParts(text);
  if (parts) return typed(parts);
  if (/^\d{1,3}$/.test(text)) return null; // a number of the maker's as likely as a hex of three digits
  const digits = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(text)?.[1]?.toLowerCase();
  if (digits) return typed(`#${digits.length === 3 ? [...digits].map((one) => one + one).join("") : digits}`);
  const parsed = parseColour(text);
  if (!parsed.ok) return null;
  const { l, a, b } = parsed.value;
  return { lab: [l, a, b], white: "D65", from: "typed" };
}

/** A name with the colour it brings to mind, which nobody's word is behind: it has no `from`. */
export function namedColour(name: string): Colour {
  const hex = guessedHex(name);
  return hex ? { name, hex } : { name };
}

/** A column of figures; a colour word in it is taken as a name. */
export function readHexCell(cell: Cell, words: IntakeWords): Said<Colour> {
  if (typeof cell === "number") return fromNumber(cell, words);
  const text = cellText(cell);
  const colour = readFigures(text);
  if (colour) return sure(colour);
  return guessedHex(text) ? sure(namedColour(text)) : unread(words.unread(text));
}

/** A column of names; figures in it are taken as such. */
export function readColourCell(cell: Cell): Said<Colour> {
  const text = cellText(cell);
  return sure((/^#|^rgb|^lab/i.test(text) && readFigures(text)) || namedColour(text));
}

/** Whether a text is a colour in figures beyond doubt. */
export const isHex = (text: string): boolean =>
  /^#?[0-9a-f]{6}$/i.test(text)
    ? /[a-f#]/i.test(text) || /^0/.test(text)
    : /^#[0-9a-f]{3}$/i.test(text) || /^(?:rgb|lab)\(/i.test(text);
