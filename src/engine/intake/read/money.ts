import { currenciesOfSign, isCurrency, type Money } from "../../money/index.ts";
import { type Cell, cellText } from "../table.ts";
import type { IntakeWords } from "../words/index.ts";
import { type DecimalSign, readFigure } from "./number.ts";
import { doubtful, type Said, sure, unread } from "./said.ts";

/** A currency named in text, with whether the text leaves no doubt of it; null where none is named. */
export function readCurrency(text: string, home: string): Readonly<{ code: string; sure: boolean }> | null {
  const written = text.trim();
  if (isCurrency(written.toUpperCase())) return { code: written.toUpperCase(), sure: true };
  const shared = written === ":-" ? ["SEK"] : currenciesOfSign(written);
  if (shared.length === 0) return null;
  if (shared.includes(home)) return { code: home, sure: true };
  return { code: shared[0] ?? home, sure: shared.length === 1 };
}

const shape = /^([^\d+-]*?)\s*([+-]?\d(?:[\d.,'’ ]*\d)?)\s*(?:[:,.]-)?\s*([^\d]*)$/u;

export type MoneyColumn = Readonly<{ sign: DecimalSign; home: string }>;

/**
 * An amount with the currency it says, else the one of its row, else the home's.
 * @param named the row's own currency, where a column holds it
 */
export function readMoney(
  cell: Cell,
  { sign, home }: MoneyColumn,
  named: string | null,
  words: IntakeWords,
): Said<Money> {
  const text = cellText(cell);
  const [, before = "", amount = "", after = ""] =
    typeof cell === "number" ? [text, "", text, ""] : (shape.exec(text) ?? []);
  const figure = readFigure(typeof cell === "number" ? cell : amount, sign);
  const said = `${before}${after}`.trim();
  const currency = said === "" || said === ":-" ? null : readCurrency(said, home);
  if (!figure || (said !== "" && said !== ":-" && !currency)) return unread(words.unread(text));
  const code = currency?.code ?? named ?? home;
  const money = { amount: figure.text, currency: code };
  if (figure.unsure) return doubtful(money, words.grouped(figure.text));
  return currency && !currency.sure ? doubtful(money, words.currencyGuessed(code)) : sure(money);
}

/** Whether a text looks like an amount with its currency. */
export const isMoney = (text: string): boolean => {
  const [, before = "", amount, after = ""] = shape.exec(text) ?? [];
  const said = `${before}${after}`.trim();
  return amount !== undefined && said !== "" && (said === ":-" || readCurrency(said, "") !== null);
};
