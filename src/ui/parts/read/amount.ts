import { currenciesOfSign } from "../../../engine/money/index.ts";
import { words } from "../../words/index.ts";
import { fault, type Reading, value } from "./reading.ts";

/** Letters that hands and scanners put for figures. */
const lookalikes: ReadonlyMap<string, string> = new Map([
  ["O", "0"],
  ["o", "0"],
  ["l", "1"],
  ["I", "1"],
]);

/**
 * Reads an amount as people write it: decimal comma or point, groups of three parted by space, point, comma or
 * apostrophe. One mark before exactly three figures ("1,234") is asked about, unless the currency has no decimals.
 * @param digits decimals of the currency's minor unit
 * @returns decimal text without sign, such as "1234.5"
 */
export function readAmount(written: string, digits: number): Reading {
  // Full-width figures and marks, as Japanese keyboards write them, are figures and marks.
  const text = written.normalize("NFKC").replaceAll(/[\s'’]/g, "");
  if (text === "") return { kind: "empty" };
  if (/^[-\u2212]/.test(text)) return fault(words.amount.negative);
  const strange = [...text].find((sign) => !/[\d.,]/.test(sign));
  if (strange !== undefined) return strangeSign(text, strange);
  if (!/\d/.test(text)) return fault(words.amount.noDigits);
  return readMarks(text, digits);
}

function strangeSign(text: string, sign: string): Reading {
  const figure = lookalikes.get(sign);
  if (figure === undefined || !/\d/.test(text)) return fault(words.amount.strange(sign));
  const fix = [...text].map((one) => lookalikes.get(one) ?? one).join("");
  return fault(words.amount.letter(sign, fix));
}

function readMarks(text: string, digits: number): Reading {
  const marks = text.match(/[.,]/g) ?? [];
  const last = marks.at(-1);
  if (last === undefined) return value(plain(text));
  const decimals = text.slice(text.lastIndexOf(last) + 1);
  const whole = text.slice(0, text.lastIndexOf(last));
  const lastIsOther = marks.length > 1 && marks.slice(0, -1).every((mark) => mark !== last);
  if (marks.length === 1) return readOneMark(whole, decimals, digits);
  if (lastIsOther && grouped(whole)) return value(plain(`${ungrouped(whole)}.${decimals}`));
  if (marks.every((mark) => mark === last) && grouped(text)) return value(plain(ungrouped(text)));
  return fault(words.amount.grouping);
}

function readOneMark(whole: string, decimals: string, digits: number): Reading {
  const asDecimal = plain(`${whole || "0"}.${decimals}`);
  const couldGroup = decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
  if (!couldGroup) return value(asDecimal);
  if (digits === 0) return value(plain(whole + decimals));
  return { kind: "ask", values: [plain(whole + decimals), asDecimal] };
}

const grouped = (text: string): boolean => /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*$/.test(text);
const ungrouped = (text: string): string => text.replaceAll(/[.,]/g, "");

/** Without leading noughts and without a bare mark at the end: "007." is "7". */
const plain = (text: string): string => text.replace(/^0+(?=\d)/, "").replace(/\.$/, "");

/** What a currency is called beside an amount: its code, and the signs that it has in these locales. */
function namesOf(currency: string, locales: readonly (string | undefined)[]): readonly string[] {
  const signs = locales.flatMap((locale) =>
    (["symbol", "narrowSymbol"] as const).map((currencyDisplay) => {
      const printer = new Intl.NumberFormat(locale, { style: "currency", currency, currencyDisplay });
      return printer.formatToParts(0).find(({ type }) => type === "currency")?.value ?? currency;
    }),
  );
  return [...new Set([currency, ...signs])].map((name) => name.normalize("NFKC").toLowerCase());
}

/** Figures, with what stands before and after them: "SEK 49", "49 kr.", "49:-". */
const aroundFigures = /^([^\d\u2212-]*?)\s*([\d.,].*?)\s*([:,.]-|[^\d.,:]*\.?)$/u;

/**
 * Reads an amount of money, also with its currency beside it ("49 kr", "SEK 49", "49:-", "12:50"). The name of
 * another currency is a fault: nothing is converted by the way.
 * @param locales whose signs for the currency are known
 */
export function readMoney(
  written: string,
  currency: string,
  digits: number,
  locales: readonly (string | undefined)[],
): Reading {
  const text = written.normalize("NFKC").trim();
  const [, before = "", figures = text, after = ""] = aroundFigures.exec(text) ?? [];
  const names = namesOf(currency, locales);
  const isNamed = [before, after].every((beside) => {
    const name = beside.trim().toLowerCase();
    return (
      name === "" || /^[:,.]-$/.test(name) || names.some((known) => known === name || `${known}.` === name)
    );
  });
  if (!isNamed) return readAmount(written, digits);
  return readAmount(figures.replace(/^(\d+):(\d{2})$/, "$1.$2"), digits);
}

/** The currency that an amount names beside its figures ("5,40 €", "CHF 12"), where it is one of these. */
export function currencyNamed(written: string, currencies: readonly string[]): string | null {
  const name = written.normalize("NFKC").replaceAll(/[\d\s.,:'’-]/g, "");
  const meant = currenciesOfSign(name);
  // "kr" and "$" stand for several, and are not guessed at.
  const code = meant.length === 1 ? meant[0] : name.toUpperCase();
  return code !== undefined && currencies.includes(code) ? code : null;
}
