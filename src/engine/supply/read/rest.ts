import type { Span } from "./phrase.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** A stretch that nothing has read, trimmed of the small words that only join others. */
export type Run = Readonly<Span & { text: string }>;

const ends = "[\\s&|·•:;,.!?()\\[\\]{}“”„‘’«»'–—-]|…|\\p{Extended_Pictographic}|\\uFE0F|\\u200D";

type Trims = Readonly<{ leading: RegExp; trailing: RegExp; marks: RegExp }>;

/** Where one stretch ends and another begins: a comma inside a number is none of these. */
const marks = "[;\\t()[\\]{}|“”„«»•·]|:\\s|,(?!\\d)|(?<!\\d),|\\s[-–—]\\s|\\s(?:and|with|och|med|&|\\+|/)\\s";

/** Patterns for what parts stretches, and for what stands before and after one and says nothing. */
export function trimsFor({ joiners, label }: Pick<Vocabulary, "joiners" | "label">): Trims {
  const words = joiners
    .toSorted((a, b) => b.length - a.length)
    .map((word) => (word.endsWith("/") ? word : `${word}(?![\\p{L}\\p{N}])`))
    .join("|");
  return {
    marks: new RegExp(`(?<!\\p{L})(?:${label})\\s*:|${marks}`, "giu"),
    leading: new RegExp(`^(?:${ends}|["+/*=]|(?:${words}))+`, "iu"),
    // An inch mark behind a figure belongs to it; so does a plus without a space.
    trailing: new RegExp(`(?:${ends}|(?<!\\d)"|(?<=^|\\s)[+/*=]|(?<![\\p{L}\\p{N}])(?:${words}))+$`, "iu"),
  };
}

function trimmed(text: string, start: number, { leading, trailing }: Trims): Run | null {
  const front = leading.exec(text)?.[0].length ?? 0;
  const body = text.slice(front).replace(trailing, "");
  return body === "" ? null : { start: start + front, end: start + front + body.length, text: body };
}

function parts(text: string, start: number, marks: RegExp): readonly Run[] {
  const all: Run[] = [];
  let from = 0;
  for (const mark of text.matchAll(marks)) {
    all.push({ start: start + from, end: start + mark.index, text: text.slice(from, mark.index) });
    from = mark.index + mark[0].length;
  }
  return [...all, { start: start + from, end: start + text.length, text: text.slice(from) }];
}

/** What is left of the line between the pieces, in order, one run for each stretch between commas. */
export function restOf(text: string, pieces: readonly Span[], trims: Trims): readonly Run[] {
  const sorted = pieces.toSorted((a, b) => a.start - b.start);
  const starts = [0, ...sorted.map((piece) => piece.end)];
  const ends = [...sorted.map((piece) => piece.start), text.length];
  return starts
    .flatMap((start, index) => parts(text.slice(start, ends[index]), start, trims.marks))
    .flatMap((part) => trimmed(part.text, part.start, trims) ?? []);
}
