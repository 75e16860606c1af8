import { matches, type Span, whole } from "./phrase.ts";
import { type Found, found } from "./piece.ts";

const small = [
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];
const count = `(\\d{1,4}|${small.join("|")})`;

/** Ways to write how many, surest first. A bare number counts only where the line begins. */
const patterns: readonly RegExp[] = [
  whole(`(?:(?:a|one)\\s+)?(?:pack|set|box|tin|bundle)\\s+of\\s+${count}`),
  whole(`${count}\\s*-?\\s*(?:pack|pcs|pc|pieces?)`),
  new RegExp(`(?<![\\p{L}\\p{N}])${count}\\s*[x×](?=\\s|$|\\p{L})`, "giu"),
  new RegExp(`(?<![\\p{L}\\p{N}])[x×]\\s?${count}(?![\\p{L}\\p{N}])`, "giu"),
  new RegExp(`^\\s*${count}(?=\\s+[\\p{L}])`, "giu"),
  whole("(?:a\\s+)?pair\\s+of"),
];

function toCount(word: string | undefined): number {
  if (word === undefined) return 2; // a pair
  const place = small.indexOf(word.toLowerCase());
  return place < 0 ? Number(word) : place + 1;
}

/** How many a line speaks of, as the piece that says so, or null when it does not say. */
export function readQuantity(text: string, taken: readonly Span[]): Found | null {
  for (const pattern of patterns) {
    const match = matches(text, pattern, taken).find((hit) => toCount(hit[1]) >= 1);
    if (match) return found(match, "qty", toCount(match[1]), `${toCount(match[1])} of them`);
  }
  return null;
}
