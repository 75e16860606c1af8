import type { Colour } from "../colour/index.ts";
import { isHex, namedColour, readFigures } from "./read/colour.ts";

/** One colour of a set as it was written: its number, its name and its colour, each null where nothing says it. */
export type SetColour = Readonly<{
  text: string;
  code: string | null;
  name: string | null;
  /** From the figures that were given; else the one its name brings to mind; null where neither is known. */
  colour: Colour | null;
}>;

const bullet = /^[\s\-–—*•·▪●○☐☑✓]+/u;

const inBrackets = "(?:rgba?|lab)\\([^)]*\\)";
const partings = [/\t+/, /\s*[;|]\s*/, /\s*,\s*/];

const figuresIn = new RegExp(`${inBrackets}|#[0-9a-f]{6}|#[0-9a-f]{3}|(?<![\\p{L}\\p{N}])[0-9a-f]{6}`, "giu");
const edge = /^(?![\p{L}\p{N}])/u;

/** The first colour in figures of a line, and where it stands; a word or a number that could be one is none. */
function figures(line: string): Readonly<{ start: number; end: number; colour: Colour }> | null {
  for (const match of line.matchAll(figuresIn)) {
    const end = match.index + match[0].length;
    const colour = isHex(match[0]) && edge.test(line.slice(end)) && readFigures(match[0]);
    if (colour && (match[0].startsWith("#") || (/[a-z]/i.test(match[0]) && /\d/.test(match[0]))))
      return { start: match.index, end, colour };
  }
  return null;
}

function parted(text: string): readonly string[] {
  const by = partings.find((parting) => parting.test(text));
  return (by ? text.split(by) : [text])
    .map((part) => part.trim())
    .filter((part) => /[\p{L}\p{N}]/u.test(part));
}

/** "12", "B-12", "no. 12", "W340", "#12": short, with a figure in it. */
const numbered = /^(?:(?:no|nr|nº|№|#)\.?\s*)?((?=[^\s]*\d)[\p{L}\p{N}][\p{L}\p{N}./-]{0,11})$/iu;

const codeOf = (word: string): string | null => numbered.exec(word)?.[1] ?? null;

/** The number at the front or the end of one stretch of words. */
function codeAtEdge(text: string): Readonly<{ code: string | null; name: string }> {
  const words = text.replace(/^(no|nr|nº|№|#)\.?\s+(?=\d)/iu, "$1").split(/\s+/);
  const [first = "", last = ""] = [words[0], words.at(-1)];
  const trim = (rest: readonly string[]) =>
    rest
      .join(" ")
      .replace(/^[\s:.)\-–—=]+|[\s:(\-–—=]+$/g, "")
      .trim();
  const front = codeOf(first.replace(/[:.)]$/, ""));
  if (front) return { code: front, name: trim(words.slice(1)) };
  const back = words.length > 1 ? codeOf(last.replace(/^\(|\)$/g, "")) : null;
  return back ? { code: back, name: trim(words.slice(0, -1)) } : { code: null, name: trim(words) };
}

function codeAndName(stretches: readonly string[]): Readonly<{ code: string | null; name: string }> {
  const parts = stretches.flatMap(parted);
  if (parts.length < 2) return codeAtEdge(parts[0] ?? "");
  const at = parts.findIndex((part) => codeOf(part) !== null);
  if (at === -1) return codeAtEdge(parts.join(" "));
  return { code: codeOf(parts[at] ?? ""), name: parts.filter((_, place) => place !== at).join(" ") };
}

function readColour(line: string): SetColour {
  const text = line.replace(bullet, "").trim();
  const found = figures(text);
  const around = found ? [text.slice(0, found.start), text.slice(found.end)] : [text];
  const { code, name } = codeAndName(around);
  const named = name === "" ? null : namedColour(name);
  const colour = found ? { ...(name === "" ? {} : { name }), ...found.colour } : named;
  return { text, code, name: name || null, colour };
}

/**
 * Reads a whole set of colours, one a line, as charts and shops list them: number, name and hex in any order, parted
 * by tabs, commas, semicolons or spaces ("12 moss #6b7d3a", "moss, B-12, rgb(107, 125, 58)").
 * @returns one for each line that says something, in order. A colour that only its name brings to mind is a guess
 *   and can be told from a given one (`isGuessedColour`).
 */
export const readColourSet = (text: string): readonly SetColour[] =>
  text
    .split(/\r\n|\n|\r/)
    .filter((line) => /[\p{L}\p{N}]/u.test(line))
    .map(readColour);
