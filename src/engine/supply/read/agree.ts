import { sheetMm } from "../paper.ts";

/** "300 gsm (140 lb)", "9 x 12 in / 23 x 30.5 cm": one thing said twice, to within two hundredths: 1 fl oz is sold as 30 ml. */
export function agree(one: unknown, other: unknown): boolean {
  if (typeof one === "string" && Array.isArray(other))
    return agree(
      sheetMm(one),
      other.toSorted((a, b) => a - b),
    );
  if (typeof other === "string" && Array.isArray(one)) return agree(other, one);
  if (Array.isArray(one) && Array.isArray(other))
    return one.every((side, index) => agree(side, other[index]));
  if (typeof one !== "number" || typeof other !== "number") return one === other;
  return Math.abs(one - other) <= Math.max(one, other) * 0.02;
}
