/** A stretch of the written line, `end` exclusive, counted in UTF-16 units as text fields do. */
export type Span = Readonly<{ start: number; end: number }>;

/** Words or phrases of one language, with what may follow their last word, as a pattern. */
export type Phrases = Readonly<{ words: readonly string[]; ending: string }>;

/** Text as a pattern that matches just that. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** Words may be joined by a space, a hyphen or nothing; the last may stand in the plural. */
const phrase = (words: string, ending: string): string =>
  `${words
    .trim()
    .split(/[\s-]+/)
    .map(literal)
    .join("[\\s-]*")}${ending}`;

/** A pattern for whole words: no letter or digit may touch it on either side. */
export const whole = (pattern: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])(?:${pattern})(?![\\p{L}\\p{N}])`, "giu");

/** A pattern for any of these words or phrases; for none of them, one that matches nothing. */
export function anyOf(all: readonly Phrases[]): RegExp {
  const patterns = all.flatMap(({ words, ending }) => words.map((word) => phrase(word, ending)));
  return patterns.length === 0 ? /(?!)/g : whole(patterns.join("|"));
}

export const overlaps = (one: Span, other: Span): boolean => one.start < other.end && other.start < one.end;

/** All matches of a pattern that touch nothing already taken. */
export function matches(text: string, pattern: RegExp, taken: readonly Span[]): readonly RegExpExecArray[] {
  if (text.search(pattern) < 0) return []; // most words are in no line: matchAll copies the pattern to find that out
  return [...text.matchAll(pattern)].filter((match) => {
    const span = { start: match.index, end: match.index + match[0].length };
    return !taken.some((piece) => overlaps(piece, span));
  });
}
