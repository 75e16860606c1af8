import { readFileSync } from "node:fs";
import { wordsIn as colour } from "../../../src/engine/colour/words/index.ts";
import { wordsIn as match } from "../../../src/engine/match/words/index.ts";
import { wordsIn as price } from "../../../src/engine/price/words/index.ts";
import { wordsIn as supply } from "../../../src/engine/supply/words/index.ts";
import { samplePath } from "../../unit/sample.ts";
import { places } from "../../unit/words/places.ts";
import { textsIn } from "../../unit/words/texts.ts";

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];
const wordsIn = (words: unknown): readonly string[] => textsIn(words).flatMap(([, said]) => wordsOf(said));

/** Words of English that no Swedish sentence has use for, wherever they come from. */
const small =
  "the of and with not from are is your my what this that by which there have has nothing line lines prices to it its was were been than would could should each every other any some".split(
    " ",
  );

/** Words that the screens and the engine say in English, and in no Swedish sentence. */
const english: ReadonlySet<string> = (() => {
  const engine = [colour, supply, match, price];
  const swedish = new Set([...places.map(([, , sv]) => sv), ...engine.map(({ sv }) => sv)].flatMap(wordsIn));
  const ours = [...places.map(([, en]) => en), ...engine.map(({ en }) => en)].flatMap(wordsIn);
  return new Set([...ours, ...small].filter((word) => !swedish.has(word)));
})();

/** A text as texts are compared: no matter the spaces and the case, and no currencies, which are called so everywhere. */
const plain = (text: string): string =>
  text
    .replaceAll(/\s+/g, " ")
    .trim()
    .replaceAll(/\b[A-Z]{3}\b/g, "…")
    .toLowerCase();

/** Every text of the sample, the longest first, so that none is cut up by a shorter one. */
const given: readonly string[] = (() => {
  const texts = new Set<string>();
  JSON.parse(readFileSync(samplePath, "utf8"), (_, value: unknown) => {
    if (typeof value === "string" && value.length > 1) texts.add(plain(value));
    return value;
  });
  return [...texts].toSorted((a, b) => b.length - a.length);
})();

const isLetter = (letter: string | undefined) => letter !== undefined && /\p{L}/u.test(letter);

/** A text without what the sample says itself: that stays in the language it was written in. */
function withoutGiven(text: string): string {
  let left = plain(text);
  for (const piece of given) {
    for (let at = left.indexOf(piece); at >= 0; at = left.indexOf(piece, at + 1)) {
      const end = at + piece.length;
      if (isLetter(left[at - 1]) || isLetter(left[end])) continue;
      left = `${left.slice(0, at)}…${left.slice(end)}`;
    }
  }
  return left;
}

/** What is English in a text of a Swedish page: words, figures with a point, months. Empty where nothing is. */
export function englishIn(text: string): readonly string[] {
  const left = withoutGiven(text);
  return [
    ...wordsOf(left).filter((word) => english.has(word)),
    ...(left.match(/\d+\.\d+/g) ?? []),
    ...(left.match(/\b(?:january|february|march|may|june|july|august|october)\b/g) ?? []),
  ];
}
