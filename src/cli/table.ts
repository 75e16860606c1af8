import { visible } from "./visible.ts";

/** Rows as lined-up columns; those named in `right` are set to the right. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const all = [head, ...rows].map((row) => row.map(visible));
  const widths = head.map((_, i) => Math.max(...all.map((row) => (row[i] ?? "").length)));
  const cell = (text: string, i: number) =>
    right.includes(i) ? text.padStart(widths[i] ?? 0) : text.padEnd(widths[i] ?? 0);
  return all
    .map(
      (row) =>
        `${head
          .map((_, i) => cell(row[i] ?? "", i))
          .join("  ")
          .trimEnd()}\n`,
    )
    .join("");
}
