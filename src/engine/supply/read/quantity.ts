import type { InEvery } from "../../record/index.ts";
import { literal, matches, type Span, whole } from "./phrase.ts";
import { type Found, found } from "./piece.ts";
import { type CountWords, vocabularies } from "./vocabulary.ts";
import type { Voice } from "./voice.ts";

/** How many, by what a pattern has caught; null where it is no count after all. */
type Rule = Readonly<{ pattern: RegExp; count: (match: RegExpExecArray, line: Line) => number | null }>;

type Line = Readonly<{ text: string; taken: readonly Found[]; words: CountWords }>;

const clear = "(?<![\\p{L}\\p{N}])(?<!\\p{N}[.,/:–-])";
const open = "(?![\\p{L}\\p{N}½¼¾])(?![.,/:–-]\\p{N})";
const unit = '(?:mm|cm|dm|m|km|in|inch|inches|tum|ft|yd|yards?|ml|cl|l|g|kg|oz|lbs?|%|"|”|″)';

const numberIn = (text: string | undefined, { numbers }: CountWords): number =>
  numbers.get((text ?? "").toLowerCase()) ?? Number(text);

/** A count between a sign of times and the line's other figures: "24 x 32" are two sides and no count. */
function timesBefore(match: RegExpExecArray, { text, taken, words }: Line): number | null {
  const next =
    match.index +
    match[0].length +
    (/^\s*/.exec(text.slice(match.index + match[0].length))?.[0] ?? "").length;
  const isSides = /^[\d.½¼¾]/.test(text.slice(next)) && !taken.some(({ start }) => start === next);
  return isSides ? null : numberIn(match[1], words);
}

function timesAfter(match: RegExpExecArray, { text, taken, words }: Line): number | null {
  const before = text.slice(0, match.index).trimEnd();
  const isMeasured = new RegExp(`[\\d½¼¾]\\s*${unit}?$`, "iu").test(before);
  const isTaken = taken.some(({ end }) => end === before.length);
  return isMeasured && !isTaken ? null : numberIn(match[1], words);
}

/** The piece that follows a match with nothing but spaces between. */
const nextTo = (match: RegExpExecArray, { text, taken }: Line): Found | undefined => {
  const end = match.index + match[0].length;
  return taken.find(({ start }) => start >= end && text.slice(end, start).trim() === "");
};

/** "8 round brush" may be size 8, or eight of them: with one brush and a number, nobody knows. */
const mayBeSize = (next: Found | undefined, { taken, words }: Line): boolean => {
  const brush = taken.find(({ field, value }) => field === "family" && value === "brush");
  return next?.field === "traits.shape" && brush !== undefined && !isPlural(brush.text, words);
};

function atStart(match: RegExpExecArray, line: Line): number | null {
  const value = numberIn(match[1], line.words);
  const next = nextTo(match, line);
  const isBeforeFigure = /^\s+[\d.]/.test(line.text.slice(match.index + match[0].length));
  const told = /\((\d+)\)$/.exec(match[0])?.[1];
  if ((isBeforeFigure && !next) || (told && Number(told) !== value)) return null;
  return value > 1 && mayBeSize(next, line) ? null : value;
}

const isPlural = (text: string, { plural }: CountWords): boolean =>
  new RegExp(`(?:${plural})$`, "iu").test(text);

/** "set, 6 tubes": a number that stands first after a comma and counts a thing in the plural. */
function beforePlural(match: RegExpExecArray, line: Line): number | null {
  const next = nextTo(match, line);
  const counts = next && (next.field === "family" || /^traits\.(?:form|kind|medium)$/.test(next.field));
  return counts && isPlural(next.text, line.words) ? numberIn(match[1], line.words) : null;
}

/** Ways to write how many, surest first. A bare number counts only where the line begins. */
function rulesOf(words: CountWords): readonly Rule[] {
  const named = [...words.numbers.keys()].toSorted((a, b) => b.length - a.length).map(literal);
  const number = `(\\d{1,4}|${named.join("|")})`;
  const simple = (match: RegExpExecArray): number => numberIn(match[1], words);
  const rule = (pattern: string, count: Rule["count"]): Rule => ({
    pattern: new RegExp(pattern, "giu"),
    count,
  });
  return [
    { pattern: whole(words.halfDozen), count: () => 6 },
    {
      pattern: whole(`(?:${clear}${number}\\s+)?(?:${words.dozen})`),
      count: (match) => 12 * (match[1] ? simple(match) : 1),
    },
    {
      pattern: whole(
        `(?:${clear}${number}\\s*(?:[x×]\\s*)?\\s)?(?:${words.packs})\\.?\\s+(?:${words.of})\\s+${number}${open}(?:\\s*[x×](?=\\s*\\d))?`,
      ),
      count: (match) => (match[1] ? simple(match) : 1) * numberIn(match[2], words),
    },
    rule(`${clear}${number}\\s*-?\\s*(?:${words.pieces})(?![\\p{L}\\p{N}])\\.?`, simple),
    rule(`(?<![\\p{L}\\p{N}])(?:${words.quantity})\\s*[:=.]?\\s*${number}${open}`, simple),
    rule(`${clear}${number}\\s*[x×*](?=\\s|$|\\p{L}|\\d)`, timesBefore),
    rule(
      `(?:(?<![\\p{L}\\p{N}])[x×]|\\*)\\s?${number}${open}(?!\\s?${unit}(?![\\p{L}\\p{N}]))(?!\\s*[x×])`,
      timesAfter,
    ),
    { pattern: whole(`(?:${words.two})(?=\\s)`), count: () => 2 },
    rule(
      `(?<=^[\\s|(]*)${number}(?:\\s*\\(\\d{1,4}\\))?(?=\\s+[\\p{L}\\d.(“"#]|\\s*[,|\\t]\\s*\\p{L})(?!\\s+(?:${words.inOne})\\s+\\d)`,
      atStart,
    ),
    rule(`(?<!~\\s*|(?:${words.inOne})\\s+)${clear}${number}(?=\\s)`, beforePlural),
    rule(`(?<=[-–—,(|]\\s*)${number}(?=\\s+(?:${words.holders})(?![\\p{L}\\p{N}]))`, simple),
    rule("(?<=\\()(1)(?=\\)\\s*$)", simple),
  ];
}

const rules: InEvery<readonly Rule[]> = {
  en: rulesOf(vocabularies.en.counts),
  sv: rulesOf(vocabularies.sv.counts),
};

/**
 * How many a line speaks of, as the piece that says so, or null when it does not say.
 * @param aside stretches that hold figures of another kind, such as prices
 */
export function readQuantity(
  text: string,
  { language, words, says }: Voice,
  taken: readonly Found[],
  aside: readonly Span[],
): Found | null {
  const line: Line = { text, taken, words: words.counts };
  for (const { pattern, count } of rules[language]) {
    for (const match of matches(text, pattern, [...taken, ...aside])) {
      if (/^0\d/.test(match[1] ?? "")) continue; // "05 fineliner" is a width or a number, and no count
      const value = count(match, line);
      if (value !== null && value >= 1) return found(match, "qty", value, says.quantity(value));
    }
  }
  return null;
}
