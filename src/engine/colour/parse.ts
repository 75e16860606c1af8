import { fail, type Outcome, ok } from "../record/index.ts";
import { type Lab, labFromHex } from "./lab.ts";

const hexForm = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i;
const number = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)";
const labForm = new RegExp(`^lab\\(\\s*(${number})[\\s,]+(${number})[\\s,]+(${number})\\s*\\)$`, "i");

const widen = (hex: string): string =>
  hex.length === 3 ? [...hex].map((digit) => digit + digit).join("") : hex;

/**
 * A colour as typed: hex (`#6b7d3a`, also without `#` or of three digits) or `lab(L a b)` under D65.
 * @returns a fault at `colour` that quotes what was typed when it is neither
 */
export function parseColour(text: string): Outcome<Lab> {
  const trimmed = text.trim();
  const hex = hexForm.exec(trimmed)?.[1];
  if (hex) return ok(labFromHex(`#${widen(hex)}`));
  const parts = labForm.exec(trimmed);
  if (!parts)
    return fail("colour", `"${text}" is not a colour`, 'write hex such as "#6b7d3a", or "lab(50 -12 30)"');
  return ok({ white: "D65", l: Number(parts[1]), a: Number(parts[2]), b: Number(parts[3]) });
}
