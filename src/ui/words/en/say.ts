/** How English says counts and lists, for the words of every place. */

const small = "one two three four five six seven eight nine ten eleven twelve".split(" ");

/** A count in words up to twelve, in figures above: "seven", "14". `none` is what nought is called there. */
export const spelled = (count: number, none = "no"): string =>
  count === 0 ? none : (small[count - 1] ?? String(count));

/** "a", "a and b", "a, b and c". */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

/** With a capital, to begin a sentence. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A name inside a sentence: "flat brush" of "Flat brush". Names that begin with two capitals stay. */
export const within = (name: string): string =>
  /^\p{Lu}\p{Ll}/u.test(name) ? name.slice(0, 1).toLowerCase() + name.slice(1) : name;
