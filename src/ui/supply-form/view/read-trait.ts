import { type SheetMm, sheetMm } from "../../../engine/supply/index.ts";
import { readAmount } from "../../parts/read/amount.ts";
import { supplyWords as words } from "../../words/supply.ts";

/** What a typed text gives its field: a value (undefined: left open), or what is wrong and how to put it right. */
export type Read<T> = Readonly<{ ok: true; value: T | undefined }> | Readonly<{ ok: false; fault: string }>;

const value = <T>(read: T | undefined): Read<T> => ({ ok: true, value: read });
const fault = (text: string): { ok: false; fault: string } => ({ ok: false, fault: text });

/** A number above nought, with a comma or a point; `1,234` is not guessed at. */
export function readNumber(text: string, whole: boolean): Read<number> {
  const reading = readAmount(text, whole ? 0 : 3);
  if (reading.kind === "empty") return value<number>(undefined);
  if (reading.kind === "ask") return fault(words.twoReadings(text.trim(), ...pair(reading.values)));
  const number = reading.kind === "value" ? Number(reading.value) : Number.NaN;
  const fits = number > 0 && (!whole || Number.isSafeInteger(number));
  if (fits) return value(number);
  return fault(whole ? words.notAWhole(text.trim()) : words.notANumber(text.trim()));
}

const pair = ([whole = "", decimal = ""]: readonly string[]): [string, string] => [whole, decimal];

/** Texts with commas between, none twice. */
export function readTexts(text: string): Read<readonly string[]> {
  const texts = [...new Set(text.split(/[,;]/).map((one) => one.trim()))].filter((one) => one !== "");
  return value(texts.length > 0 ? texts : undefined);
}

const sides = /^(\d+(?:[.,]\d+)?)\s*(?:mm|cm|in)?\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|in)?$/i;
const mmPer: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 };
const inMm = (text: string, unit: string): number =>
  Math.round(Number(text.replace(",", ".")) * (mmPer[unit] ?? 1) * 10) / 10;

/** A paper size: a name that is known (A4), or two sides; without a unit they are millimetres. */
export function readSize(text: string): Read<string | SheetMm> {
  const written = text.trim();
  if (written === "") return value<string>(undefined);
  const match = sides.exec(written);
  if (match) {
    const unit = (match[3] ?? "mm").toLowerCase();
    const size: SheetMm = [inMm(match[1] ?? "", unit), inMm(match[2] ?? "", unit)];
    return size[0] > 0 && size[1] > 0 ? value<SheetMm>(size) : fault(words.notASize);
  }
  return sheetMm(written) ? value<string>(written) : fault(words.notASize);
}
