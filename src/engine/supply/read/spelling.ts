import { hexOfWord } from "./colour-words.ts";
import type { Span } from "./phrase.ts";
import { listed, wordings } from "./words/index.ts";

/** A line as its words are mostly spelt, and where each of its characters stands in the line as it was written. */
export type Spelt = Readonly<{ text: string; back: (span: Span) => Span }>;

const wordsOf = (texts: readonly string[]): readonly string[] =>
  texts.flatMap((text) => listed(text).flatMap((phrase) => phrase.toLowerCase().split(/[\s-]+/)));

/** What means one thing, each as the words of its phrases. */
const meanings: readonly (readonly string[])[] = Object.values(wordings).flatMap(
  ({ kinds, compounds, traits }) =>
    [
      ...Object.values(kinds),
      ...compounds.map(([, words]) => words),
      ...Object.values(traits).flatMap((telling) => Object.values(telling).flatMap(Object.values)),
    ].map((text) => wordsOf([text])),
);
const otherWords = Object.values(wordings).flatMap(({ noColours, joiners, packs, pieces, sheets }) =>
  wordsOf([noColours, joiners, packs, pieces, sheets]),
);

/** Shorter words have too many neighbours: "paint" and "print" are one letter apart, and so are "pan" and "pen". */
const shortest = 6;

const all: ReadonlySet<string> = new Set([...meanings.flat(), ...otherWords]);
const long = [...new Set(meanings.flat())].filter((word) => word.length >= shortest);

/** By their first letter, which slips mostly leave alone. */
const meant: ReadonlyMap<string, readonly string[]> = new Map(
  [...new Set(long.map((word) => word.charAt(0)))].map((first) => [
    first,
    long.filter((word) => word.startsWith(first)),
  ]),
);

/** Words of their own that lie one slip away from one of ours. */
const others = new Set([
  "market",
  "marked",
  "marking",
  "striker",
  "tracking",
  "carbonate",
  "filtered",
  "panels",
]);

/** Whether one letter too many, too few, another, or two in turned order part the two words. */
function isOneSlip(one: string, other: string): boolean {
  if (Math.abs(one.length - other.length) > 1) return false;
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  const [rest, otherRest] = [one.slice(at), other.slice(at)];
  return (
    rest.slice(1) === otherRest.slice(1) ||
    rest.slice(1) === otherRest ||
    rest === otherRest.slice(1) ||
    (rest[0] === otherRest[1] && rest[1] === otherRest[0] && rest.slice(2) === otherRest.slice(2))
  );
}

const endings = /(?:e?s|erna|orna|arna|en|et|er|ar|or|na|n|r|t|a)$/u;

/** Whether a word is one of ours, or a colour, also with an ending. */
const isOurs = (word: string): boolean =>
  all.has(word) || hexOfWord(word) !== null || all.has(word.replace(endings, "")) || others.has(word);

/** The word of ours that a word is a slip of; null for none, and where those near it mean different things. */
function slipOf(word: string): string | null {
  if (word.length < shortest || isOurs(word)) return null;
  const bare = word.replace(/s$/, "");
  const near = (meant.get(word.charAt(0)) ?? []).filter(
    (ours) => isOneSlip(ours, word) || isOneSlip(ours, bare),
  );
  return meanings.some((words) => near.every((one) => words.includes(one))) ? (near[0] ?? null) : null;
}

/** What things are called in languages that join their words. */
const tails: ReadonlySet<string> = new Set(
  Object.values(wordings)
    .filter(({ compounds }) => compounds.length > 0)
    .flatMap(({ kinds }) => wordsOf(Object.values(kinds)))
    .filter((word) => word.length >= 4),
);

/** What a joined word begins with has at least three letters. */
const shortestFirst = 3;

/** Where a joined word ("stållinjal") is to be parted so that its last part is a thing we know; 0 for nowhere. */
function seamOf(word: string): number {
  if (isOurs(word)) return 0;
  for (let seam = shortestFirst; seam <= word.length - 4; seam += 1) {
    const tail = word.slice(seam);
    if (tails.has(tail) || tails.has(tail.replace(endings, ""))) return seam;
  }
  return 0;
}

type Part = Readonly<{ text: string; start: number; end: number }>;

function partsOf(written: string, start: number, isName: boolean): readonly Part[] {
  const whole = { text: written, start, end: start + written.length };
  const word = written.toLowerCase();
  if (isName) return [whole];
  const seam = seamOf(word);
  if (seam > 0)
    return [
      { text: `${written.slice(0, seam)} `, start, end: start + seam },
      { text: written.slice(seam), start: start + seam, end: whole.end },
    ];
  const right = slipOf(word);
  return right ? [{ ...whole, text: right }] : [whole];
}

/** A capital inside a line that is not all capitals is mostly a maker's. */
const isNameIn = (text: string, word: string, at: number): boolean =>
  /^\p{Lu}\p{Ll}/u.test(word) && /[\p{L}\p{N}]/u.test(text.slice(0, at));

/** A line without slips of the pen in our words, and with joined words parted where their last part is a thing. */
export function spelt(text: string): Spelt {
  const parts: Part[] = [];
  let at = 0;
  for (const { 0: word, index } of text.matchAll(/\p{L}{5,}/gu)) {
    if (index > at) parts.push({ text: text.slice(at, index), start: at, end: index });
    parts.push(...partsOf(word, index, isNameIn(text, word, index)));
    at = index + word.length;
  }
  if (at < text.length) parts.push({ text: text.slice(at), start: at, end: text.length });
  const right = parts.map((part) => part.text).join("");
  return right === text ? { text, back: (span) => span } : { text: right, back: backIn(parts) };
}

/** Where in the written line a stretch of the spelt one stands: inside a word put right, the whole word. */
function backIn(parts: readonly Part[]): Spelt["back"] {
  const starts: number[] = [];
  let length = 0;
  for (const { text } of parts) {
    starts.push(length);
    length += text.length;
  }
  const placeOf = (offset: number, isEnd: boolean): number => {
    const index = starts.findLastIndex((start) => (isEnd ? start < offset : start <= offset));
    const part = parts[Math.max(0, index)];
    if (!part) return 0;
    const into = offset - (starts[Math.max(0, index)] ?? 0);
    const same = part.text.length === part.end - part.start;
    return same ? part.start + into : isEnd ? part.end : part.start;
  };
  return ({ start, end }) => ({ start: placeOf(start, false), end: placeOf(end, true) });
}
