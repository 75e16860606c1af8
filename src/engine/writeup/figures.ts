import type { Money } from "../money/index.ts";
import type { WriteupWords } from "./words/index.ts";

type Words = Pick<WriteupWords, "amount" | "least">;

/** A gain with its sign, a true minus for a loss. */
function gainWords({ amount }: Money, words: Words): string {
  const text = words.amount(amount.replace("-", "−"));
  return isNothing({ amount }) || text.startsWith("−") ? text : `+${text}`;
}

/** An amount that is only a least one where a line has no price: "at least +44.26". */
const leastWords = (text: string, unpriced: readonly string[], words: Words): string =>
  unpriced.length > 0 ? words.least(text) : text;

/** "+44.26", "at least +44.26" where a line has no price. */
export const leastGainWords = (gain: Money, unpriced: readonly string[], words: Words): string =>
  leastWords(gainWords(gain, words), unpriced, words);

/** "425.98", "at least 425.98" where a line has no price. */
export const totalWords = ({ amount }: Money, unpriced: readonly string[], words: Words): string =>
  leastWords(words.amount(amount), unpriced, words);

/** Whether an amount is nothing, in whatever decimals. */
export const isNothing = ({ amount }: Pick<Money, "amount">): boolean => /^[0.]+$/.test(amount);
