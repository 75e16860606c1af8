import type { Supply } from "../../engine/supply/index.ts";
import type { Kit } from "../../engine/worth/index.ts";
import type { Path } from "../journal/index.ts";

const words: ReadonlyMap<string, string> = new Map([
  ["boughtForThis", "buying note"],
  ["fromKit", "kit it came from"],
  ["gsm", "weight"],
  ["kits", "number of kits"],
  ["loggedOn", "log date"],
  ["ml", "volume"],
  ["owned", "number owned"],
  ["qty", "number"],
  ["received", "received mark"],
  ["reportMarkets", "markets to report on"],
  ["spokenMarket", "market to speak of"],
  ["twinOf", "twins"],
  ["valuedOn", "date of the prices"],
  ["want", "share you would use"],
  ["widthMm", "width"],
]);

/** A field by the word for it, for the names of acts: "place", "sheets left". */
export function fieldWord(path: Path): string {
  const name = path.findLast((step) => typeof step === "string") ?? "";
  return words.get(name) ?? name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

export const supplyName = ({ supply }: Readonly<{ supply: Supply }>): string =>
  supply.name || "an unnamed supply";

export const kitName = ({ title, maker, period }: Kit): string => title || `${maker} ${period}`;

export const change = (path: Path, of: string): string => `Change the ${fieldWord(path)} of ${of}`;

/** "1 item", "3 items". */
export const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
