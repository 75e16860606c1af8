import type { LeftOut } from "../../../engine/match/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { Shelves } from "./solve.ts";

const words = remakeWords.standIns;
const inUse = "in-use:";

/** Why an item is left out, in words: "dried out", "plays line 3, rowan". */
export function outText(leftOut: LeftOut, shelves: Shelves): string {
  if (
    leftOut === "received-before" ||
    leftOut === "acquired-after" ||
    leftOut === "empty" ||
    leftOut === "dried"
  )
    return words.out[leftOut];
  const line = leftOut.slice(inUse.length);
  return words.inUse(shelves.numberOf(line), shelves.line(line)?.supply.name ?? "");
}

/** What a person may do about it: take it (another line gives way), take it and bend a rule, or nothing. */
export function wayIn(leftOut: LeftOut): "use" | "bend" | "none" {
  if (leftOut === "empty" || leftOut === "dried") return "none";
  return leftOut.startsWith(inUse) ? "use" : "bend";
}
