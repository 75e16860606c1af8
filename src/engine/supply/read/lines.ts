import type { Language } from "../../record/index.ts";
import { withoutBullet } from "./bullet.ts";
import type { KnownNames } from "./draft.ts";
import { type LineReading, readLine } from "./line.ts";

/** A line of nothing but bullets, rules and spaces. */
const says = (line: string): boolean => /[\p{L}\p{N}]/u.test(line);

/**
 * Reads a pasted list: one thing a line, or several with semicolons between. Bullets, boxes and numbers at
 * the front are no part of it.
 * @returns one reading for each line that says something, in order, with the line as it was read
 */
export const readLines = (
  text: string,
  known: KnownNames = {},
  language: Language = "en",
): readonly Readonly<LineReading & { text: string }>[] =>
  text
    .split(/[\r\n;]+/)
    .map((line) => withoutBullet(line).trim())
    .filter(says)
    .map((line) => ({ text: line, ...readLine(line, known, language) }));
