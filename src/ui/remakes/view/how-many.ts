import type { Line } from "../../../engine/price/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { remakeWords } from "../../words/remakes.ts";

/** Paper is counted by its sheets: a kit's two sheets can both come from one pad. */
const isOfSheets = ({ supply }: StashItem): boolean =>
  supply.family === "paper" && (supply.traits?.sheets ?? 1) > 1;

/** "2 in the kit, 1 here", where the kit held more of a thing than are owned; else nothing. */
export function fewerHere(line: Line, item: StashItem): readonly string[] {
  const [inKit, here] = [line.qty ?? 1, item.owned ?? 1];
  return inKit > here && !isOfSheets(item) ? [remakeWords.standIns.fewer(inKit, here)] : [];
}
