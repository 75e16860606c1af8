/** A text of some words: where it stands, and what it says. */
export type Text = readonly [at: string, said: string];

/**
 * What texts that are put together are asked with. Each takes what it takes: it is asked with all of these, and what
 * it cannot do anything with it leaves. The names in it are of no language.
 */
const samples: readonly unknown[] = [0, 1, 2, 14, "Zq", ["Zq"], ["Zq", "Zw", "Zy"], true, false, null];

type Saying = (...parts: readonly unknown[]) => unknown;

function asked(say: Saying, sample: unknown): unknown {
  try {
    return say(...Array.from({ length: Math.max(say.length, 1) }, () => sample));
  } catch {
    return null; // it is not asked with this
  }
}

/** Every text of some words, those that are put together once for each sample that they take. */
export function textsIn(words: unknown, at = ""): readonly Text[] {
  if (typeof words === "string") return [[at, words]];
  if (typeof words === "function") {
    const say = words as Saying; // the words of the app are texts, and functions that make texts
    return samples.flatMap((sample, index) => textsIn(asked(say, sample), `${at}(${index})`));
  }
  if (typeof words !== "object" || words === null) return [];
  return Object.entries(words).flatMap(([key, inner]) => textsIn(inner, at === "" ? key : `${at}.${key}`));
}
