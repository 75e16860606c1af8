import type { Around, Cell, Table } from "../../../src/engine/intake/index.ts";

/** A table out of lines with bars between the cells; empty cells are null. */
export const tableOf = (lines: string): Table => ({
  name: "list",
  rows: lines
    .trim()
    .split("\n")
    .map((line) => line.split("|").map((cell): Cell => cell.trim() || null)),
});

export const around = (more: Partial<Around> = {}): Around => ({
  stash: [],
  known: {},
  today: "2026-05-01",
  language: "en",
  ...more,
});
