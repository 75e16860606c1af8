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
  const text = written.trim().replaceAll(/[\s\u00a0\u202f'’]/g, "");
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
