import type { Formatter } from "../../words/index.ts";
import { keepSafeWords } from "../../words/keep-safe.ts";

const units = ["B", "kB", "MB", "GB"] as const;

/** A size in bytes as people say it, in steps of a thousand: "96 kB", "1.3 MB". */
export function bytesText(bytes: number, format: Formatter): string {
  const step = Math.min(units.length - 1, bytes < 1 ? 0 : Math.floor(Math.log10(bytes) / 3));
  const value = bytes / 1000 ** step;
  return keepSafeWords.bytes(format.number(value, step > 0 && value < 10 ? 1 : 0), units[step] ?? "B");
}
