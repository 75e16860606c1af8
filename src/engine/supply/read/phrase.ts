/** A stretch of the written line, `end` exclusive, counted in UTF-16 units as text fields do. */
export type Span = Readonly<{ start: number; end: number }>;

/** Text as a pattern that matches just that. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** Words may be joined by a space, a hyphen or nothing; the last may stand in the plural. */
function phrase(words: string): string {
  const parts = words
    .trim()
    .split(/[\s-]+/)
    .map(literal);
  return `${parts.join("[\\s-]*")}(?:e?s)?`;
}

/** A pattern for whole words: no letter or digit may touch it on either side. */
export const whole = (pattern: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])(?:${pattern})(?![\\p{L}\\p{N}])`, "giu");

/** A pattern for any of these words or phrases. */
export const anyOf = (words: readonly string[]): RegExp => whole(words.map(phrase).join("|"));

export const overlaps = (one: Span, other: Span): boolean => one.start < other.end && other.start < one.end;

/** All matches of a pattern that touch nothing already taken. */
export function matches(text: string, pattern: RegExp, taken: readonly Span[]): readonly RegExpExecArray[] {
  return [...text.matchAll(pattern)].filter((match) => {
    const span = { start: match.index, end: match.index + match[0].length };
    return !taken.some((piece) => overlaps(piece, span));
  });
}
