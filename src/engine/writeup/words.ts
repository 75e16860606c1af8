import type { Money } from "../money/index.ts";
import { factsOf, type Supply } from "../supply/index.ts";

const months = "January February March April May June July August September October November December".split(
  " ",
);

/** A month in words: "April 2026". */
export function monthWords(period: string): string {
  const [year = "", month = ""] = period.split("-");
  return `${months[Number(month) - 1] ?? month} ${year}`;
}

/** A supply with what is known of it: "Gouache, moss (tube, 15 ml)". */
export function supplyWords(supply: Supply): string {
  const facts = factsOf(supply);
  return facts.length > 0 ? `${supply.name} (${facts.join(", ")})` : supply.name;
}

/** A gain with its sign, a true minus for a loss. */
export const gainWords = ({ amount }: Money): string =>
  amount.startsWith("-") ? `−${amount.slice(1)}` : /^[0.]+$/.test(amount) ? amount : `+${amount}`;

/** A gain that is only a least one where a line has no price: "at least +44.26". */
export const leastGainWords = (gain: Money, unpriced: readonly string[]): string =>
  unpriced.length > 0 ? `at least ${gainWords(gain)}` : gainWords(gain);

/** "at least SEK 425.98" where a line has no price. */
export const totalWords = (money: Money, unpriced: readonly string[]): string =>
  unpriced.length > 0 ? `at least ${money.amount}` : money.amount;

/** Whether an amount is nothing, in whatever decimals. */
export const isNothing = ({ amount }: Money): boolean => /^[0.]+$/.test(amount);
