import type { Term } from "../words/terms.ts";

/** Every word of ours once, by what it belongs to. */
export const groups: Readonly<Record<"game" | "near" | "money" | "telling" | "keeping", readonly Term[]>> = {
  game: [
    "kit",
    "prompt",
    "stash",
    "standIn",
    "remake",
    "received",
    "twin",
    "lastResort",
    "basics",
    "shown",
    "bent",
  ],
  near: ["near", "gap", "pinch", "work", "apart", "palette", "steps"],
  money: [
    "listPrice",
    "shopPrice",
    "found",
    "goWith",
    "earlier",
    "asOf",
    "market",
    "rates",
    "tier",
    "border",
    "pays",
    "hangs",
    "wanted",
    "breakEven",
  ],
  telling: ["verdict", "writeup", "sources"],
  keeping: ["notebook", "copy", "setAside"],
};
