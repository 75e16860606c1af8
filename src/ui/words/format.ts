import { type Money, minorDigits } from "../../engine/money/index.ts";
import { type Language, languages } from "../../engine/record/index.ts";
import { chosenLocale, language } from "../../store/index.ts";

type Sign = "auto" | "always";

/** A printed amount in pieces, so that a column can line up on the decimal mark. */
export type MoneyPieces = Readonly<{ before: string; whole: string; fraction: string; after: string }>;

// Intl takes decimal text and keeps every digit of it; only its type asks for a literal.
const exact = (text: string) => text as Intl.StringNumericLiteral;

/** A true minus: the hyphen that some locales print is too short to be seen in a column. */
const trueMinus = (part: Intl.NumberFormatPart) => (part.type === "minusSign" ? "\u2212" : part.value);

const noon = (iso: string) => new Date(`${iso}T12:00:00Z`);

/** Number printers by what is asked of them: making one takes longer than printing hundreds of numbers with it. */
function kept(locale: Intl.Locale): (options: Intl.NumberFormatOptions) => Intl.NumberFormat {
  const made = new Map<string, Intl.NumberFormat>();
  return (options) => {
    const asked = JSON.stringify(options);
    const known = made.get(asked) ?? new Intl.NumberFormat(locale, options);
    made.set(asked, known);
    return known;
  };
}

/** The locale with the figures 0 to 9 and the calendar that the workbook counts in, so that fields can read them back. */
const plainLocale = (locale: string | undefined): Intl.Locale =>
  new Intl.Locale(locale ?? new Intl.NumberFormat().resolvedOptions().locale, {
    numberingSystem: "latn",
    calendar: "gregory",
  });

/**
 * The printer of numbers, money and dates for one locale.
 * Amounts are decimal text; their number of decimals comes from ISO 4217, never from Intl.
 */
export function formatter(locale: string | undefined) {
  const plain = plainLocale(locale);
  const whole = new Intl.NumberFormat(plain, { maximumFractionDigits: 0 });
  const day = new Intl.DateTimeFormat(plain, {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  });
  const shortDay = new Intl.DateTimeFormat(plain, { day: "numeric", month: "short", timeZone: "UTC" });
  const longDay = new Intl.DateTimeFormat(plain, {
    weekday: "long",
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  const month = new Intl.DateTimeFormat(plain, { month: "long", year: "numeric", timeZone: "UTC" });
  const time = new Intl.DateTimeFormat(plain, { hour: "2-digit", minute: "2-digit" });

  const numbers = kept(plain);
  const moneyFormat = (currency: string, sign: Sign, code: boolean) =>
    numbers({
      ...(code ? { style: "currency", currency, currencyDisplay: "code" } : { style: "decimal" }),
      minimumFractionDigits: minorDigits(currency),
      maximumFractionDigits: minorDigits(currency),
      signDisplay: sign === "always" ? "exceptZero" : "auto",
    });

  const parts = (money: Money, sign: Sign, code: boolean) =>
    moneyFormat(money.currency, sign, code).formatToParts(exact(money.amount));

  return {
    locale,

    /** "EUR 24.00", "24,00 EUR": with its currency, as the reader's locale orders them. */
    money: (money: Money, sign: Sign = "auto"): string => parts(money, sign, true).map(trueMinus).join(""),

    /** "24.00": for places whose heading names the currency. */
    amount: (money: Money, sign: Sign = "auto"): string => parts(money, sign, false).map(trueMinus).join(""),

    /** The amount split at its decimal mark; `before` and `after` hold the currency when it is asked for. */
    moneyPieces: (money: Money, sign: Sign = "auto", code = true): MoneyPieces =>
      piecesOf(parts(money, sign, code)),

    /** "SEK 11.0250", "11,0250 SEK": one side of an exchange rate, with every digit as it was written. */
    rate: (currency: string, quote: string): string => {
      const digits = quote.split(".")[1]?.length ?? 0;
      return numbers({
        ...{ style: "currency", currency, currencyDisplay: "code" },
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      }).format(exact(quote));
    },

    /** A number that is no money: up to `digits` decimals, or exactly as many with `fixed`. */
    number: (value: number | string, digits = 0, fixed = false): string =>
      numbers({ maximumFractionDigits: digits, minimumFractionDigits: fixed ? digits : 0 })
        .formatToParts(typeof value === "string" ? exact(value) : value)
        .map(trueMinus)
        .join(""),

    /** A whole count. */
    count: (value: number): string => whole.format(value),

    /** "2 May 2026" of an ISO date. */
    date: (iso: string): string => day.format(noon(iso)),

    /** "2 May", where the year is plain from what is around it. */
    shortDate: (iso: string): string => shortDay.format(noon(iso)),

    /** "Thursday 7 May 2026". */
    longDate: (iso: string): string => longDay.format(noon(iso)),

    /** "April 2026" of an ISO month or date. */
    month: (iso: string): string => month.format(noon(`${iso.slice(0, 7)}-01`)),

    /** "21:14", in the reader's own time zone. */
    time: (at: number | Date): string => time.format(at),
  };
}

export type Formatter = ReturnType<typeof formatter>;

function piecesOf(parts: readonly Intl.NumberFormatPart[]): MoneyPieces {
  const isFigure = (part: Intl.NumberFormatPart) =>
    ["minusSign", "plusSign", "integer", "group"].includes(part.type);
  const isFraction = (part: Intl.NumberFormatPart) => part.type === "decimal" || part.type === "fraction";
  const first = parts.findIndex(isFigure);
  const last = parts.findLastIndex((part) => isFigure(part) || isFraction(part));
  const print = (some: readonly Intl.NumberFormatPart[]) => some.map(trueMinus).join("");
  return {
    before: print(parts.slice(0, first)),
    whole: print(parts.slice(first, last + 1).filter((part) => !isFraction(part))),
    fraction: print(parts.filter(isFraction)),
    after: print(parts.slice(last + 1)),
  };
}

/**
 * The locale of numbers and dates: the one chosen, else the browser's own, unless that is another language that is
 * spoken here: Swedish words with an American's dates would be nobody's.
 */
export function localeFor(
  chosen: string | null,
  browser: string | undefined,
  words: Language,
): string | undefined {
  if (chosen !== null) return chosen;
  const isOther = languages.some((known) => known !== words && browser?.toLowerCase().startsWith(known));
  return isOther ? words : browser;
}

/** The printer in the reader's own locale. */
export const format: Formatter = formatter(
  localeFor(chosenLocale(), globalThis.navigator?.language, language),
);
