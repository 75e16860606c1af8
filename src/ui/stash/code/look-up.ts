import { gtin14, isGtin, type StashItem } from "../../../engine/supply/index.ts";

/** What a number typed or scanned leads to. */
export type LookedUp =
  | Readonly<{ kind: "empty" | "letters" | "slip" }>
  | Readonly<{ kind: "length"; count: number }>
  | Readonly<{ kind: "unknown"; code: string }>
  | Readonly<{ kind: "found"; code: string; items: readonly StashItem[] }>;

const lengths = [8, 12, 13, 14];

/** Looks a bar code's number up: 12 digits and the same 13 with a nought in front are one number. */
export function lookUp(text: string, stash: readonly StashItem[]): LookedUp {
  const code = text.replace(/[\s-]/g, "");
  if (code === "") return { kind: "empty" };
  if (!/^\d+$/.test(code)) return { kind: "letters" };
  if (!lengths.includes(code.length)) return { kind: "length", count: code.length };
  if (!isGtin(code)) return { kind: "slip" };
  const full = gtin14(code);
  const items = stash.filter(({ supply }) => full !== null && gtin14(supply.gtin) === full);
  return items.length > 0 ? { kind: "found", code, items } : { kind: "unknown", code };
}
