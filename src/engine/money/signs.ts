/** What each sign stands for, the likeliest first. */
const signs: ReadonlyMap<string, readonly string[]> = new Map([
  ["€", ["EUR"]],
  ["£", ["GBP"]],
  ["¥", ["JPY", "CNY"]],
  ["₩", ["KRW"]],
  ["₹", ["INR"]],
  ["zł", ["PLN"]],
  ["kč", ["CZK"]],
  ["kr", ["SEK", "NOK", "DKK", "ISK"]],
  ["$", ["USD", "CAD", "AUD", "NZD", "HKD", "SGD", "MXN"]],
  ["us$", ["USD"]],
]);

/**
 * The currencies that a sign is written for, the likeliest first: one where there is no doubt, several for "kr" and "$",
 * none where it is no sign. Case, and a dot behind it, do not count.
 * @returns ISO 4217 codes, as CLDR's locales use the signs (from memory)
 */
export const currenciesOfSign = (sign: string): readonly string[] =>
  signs.get(sign.trim().toLowerCase().replace(/\.$/, "")) ?? [];
