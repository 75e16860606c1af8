import { type KnownNames, type LineReading, readLine } from "./line.ts";

// A number with a dot or bracket and a space numbers the line; "0.3 mm" and "2 gouache" do not.
const bullet = /^\s*(?:[-–—*•·▪◦‣]\s+|[•▪◦‣]|\[[ xX]?\]\s*|\(?\d{1,3}[.)]\s+|#{1,6}\s+)+/u;

/**
 * Reads a pasted list: one thing a line, or several with semicolons between. Bullets, boxes and numbers at
 * the front are no part of it.
 * @returns one reading for each line that says something, in order, with the line as it was read
 */
export const readLines = (
  text: string,
  known: KnownNames = {},
): readonly Readonly<LineReading & { text: string }>[] =>
  text
    .split(/[\r\n;]+/)
    .map((line) => line.replace(bullet, "").trim())
    .filter((line) => line !== "")
    .map((line) => ({ text: line, ...readLine(line, known) }));
