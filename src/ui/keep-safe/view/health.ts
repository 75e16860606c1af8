import type { StorageHealth } from "../../../store/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";
import { bytesText } from "./bytes.ts";

const words = keepSafeWords.health;

function roomText({ usedBytes, quotaBytes }: StorageHealth, format: Formatter): string {
  if (usedBytes === null) return words.usedUnknown;
  const used = bytesText(usedBytes, format);
  return quotaBytes === null ? words.usedOnly(used) : words.used(used, bytesText(quotaBytes, format));
}

/** What the browser says of its storage, in plain words. `canAsk`: it may yet be asked to promise. */
export function healthView(
  health: StorageHealth,
  format: Formatter = ownFormat,
): Readonly<{ texts: readonly string[]; canAsk: boolean }> {
  const { promised } = health;
  const promise = promised === null ? words.unknown : promised ? words.promised : words.notPromised;
  return { texts: [promise, roomText(health, format), words.clears], canAsk: promised === false };
}
