import type { Span } from "./phrase.ts";

/** A stretch that nothing has read, trimmed of the small words that only join others. */
export type Run = Readonly<Span & { text: string }>;

const joiners = "a|an|the|of|in|on|with|and|for|per|each|at|plus|tips?|und|och";
const leading = new RegExp(`^(?:[\\s+&/|·:.()\\[\\]–—-]|(?:${joiners})(?![\\p{L}\\p{N}]))+`, "iu");
const trailing = new RegExp(`(?:[\\s+&/|·:.()\\[\\]–—-]|(?<![\\p{L}\\p{N}])(?:${joiners}))+$`, "iu");

function trimmed(text: string, start: number): Run | null {
  const front = leading.exec(text)?.[0].length ?? 0;
  const body = text.slice(front).replace(trailing, "");
  return body === "" ? null : { start: start + front, end: start + front + body.length, text: body };
}

/** Splits at commas, semicolons, tabs, brackets and "and"; a comma inside a number is none. */
function parts(text: string, start: number): readonly Run[] {
  const all: Run[] = [];
  let from = 0;
  for (const mark of text.matchAll(/,(?!\d)|[;\t()]|\s(?:and|with|&|\+)\s/gi)) {
    all.push({ start: start + from, end: start + mark.index, text: text.slice(from, mark.index) });
    from = mark.index + mark[0].length;
  }
  return [...all, { start: start + from, end: start + text.length, text: text.slice(from) }];
}

/** What is left of the line between the pieces, in order, one run for each stretch between commas. */
export function restOf(text: string, pieces: readonly Span[]): readonly Run[] {
  const sorted = pieces.toSorted((a, b) => a.start - b.start);
  const starts = [0, ...sorted.map((piece) => piece.end)];
  const ends = [...sorted.map((piece) => piece.start), text.length];
  return starts
    .flatMap((start, index) => parts(text.slice(start, ends[index]), start))
    .flatMap((part) => trimmed(part.text, part.start) ?? []);
}
