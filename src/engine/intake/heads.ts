import { foldText } from "../supply/index.ts";
import { type Field, fields } from "./fields.ts";
import { readCurrency } from "./read/money.ts";
import { type Cell, cellText } from "./table.ts";
import { wordsIn } from "./words/index.ts";

const plain = (text: string): string => foldText(text).replace(/[^\p{L}\p{N}/]/gu, "");

/** Fields by the words that head them; where one word heads two, both are kept in the order of the fields. */
const byWord: ReadonlyMap<string, readonly Field[]> = (() => {
  const known = new Map<string, Field[]>();
  for (const { heads } of Object.values(wordsIn))
    for (const field of fields)
      for (const word of heads[field].split(" ")) {
        const before = known.get(word) ?? [];
        if (!before.includes(field)) known.set(word, [...before, field]);
      }
  return known;
})();

const none: readonly Field[] = [];

/**
 * What a column's head says it holds, the likeliest first; none for a head that is not known. Signs, case, accents
 * and what stands in brackets do not count: "Pris (SEK)" is "pris".
 */
export function fieldsOfHead(cell: Cell | undefined): readonly Field[] {
  const text = cellText(cell);
  const whole = byWord.get(plain(text)) ?? byWord.get(plain(text.replace(/[([].*$/, "")));
  if (whole) return whole;
  if (text.length > 40) return none; // a sentence, no head
  const words = text
    .split(/[\s_/,.-]+/)
    .map(plain)
    .filter((word) => word.length > 2);
  return [...new Set(words.toReversed().flatMap((word) => byWord.get(word) ?? []))];
}

/** The currency that a head names: "Price (SEK)", "Cost €". */
export function currencyOfHead(cell: Cell | undefined, home: string): string | null {
  const parts = cellText(cell).split(/[\s()[\],:/]+/);
  const named = parts.flatMap((part) => readCurrency(part, home)?.code ?? []);
  return named[0] ?? null;
}
