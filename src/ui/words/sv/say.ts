/** How Swedish says counts and lists, for the words of every place. */

const small = "två tre fyra fem sex sju åtta nio tio elva tolv".split(" ");

/**
 * A count in words up to twelve, in figures above: "sju", "14".
 * @param none what nought is called there
 * @param one "en" or "ett", by the gender of what is counted
 */
export const spelled = (count: number, none = "inga", one: "en" | "ett" = "en"): string =>
  count === 0 ? none : count === 1 ? one : (small[count - 2] ?? String(count));

/** "a", "a och b", "a, b och c". */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} och ${parts.at(-1)}`;

/** With a capital, to begin a sentence. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
