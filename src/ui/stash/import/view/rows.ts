import type { Draft } from "../../../../engine/intake/index.ts";
import type { Supply } from "../../../../engine/supply/index.ts";
import type { Shown } from "../../../../workers/index.ts";
import { importWords as words } from "../../../words/import.ts";
import { format } from "../../../words/index.ts";
import { stashWords } from "../../../words/stash.ts";
import { factsText } from "../../view/known.ts";

/** A row of a list beside what was made of it, ready to print. */
export type RowView = Readonly<{
  key: string;
  at: number;
  /** As people count rows, from 1. */
  row: string;
  swatch: Readonly<{ id: string; supply: Supply }> | null;
  name: string;
  facts: string;
  /** Why it is not added; null for a row that is. */
  reason: string | null;
  /** What its cells hold, and why one should be looked at. */
  cells: readonly Readonly<{ column: number; text: string; doubt: string | null }>[];
  doubts: readonly string[];
}>;

/** What a column is called: its head, else its number. */
export const columnName = (heads: readonly string[], column: number): string =>
  heads[column] || words.column(format.count(column + 1));

/** The colour's name, where the thing's own name does not say it. */
function colourSaid({ name, colour }: Supply): string {
  const said = colour?.name ?? "";
  return name.toLowerCase().includes(said.toLowerCase()) ? "" : said;
}

function factsOf(draft: Draft): string {
  const { supply, owned = 1, sheetsLeft, state, paid, acquired, opened, place, tags } = draft;
  return [
    owned === 1 ? "" : words.times(format.count(owned)),
    [supply.maker, supply.line].filter(Boolean).join(", "),
    supply.code ? stashWords.item.code(supply.code) : "",
    factsText(supply),
    colourSaid(supply),
    sheetsLeft === undefined ? "" : words.sheetsLeft(format.count(sheetsLeft), sheetsLeft === 1),
    state ? stashWords.states[state] : "",
    place ?? "",
    paid ? format.money(paid) : "",
    acquired ? format.date(acquired) : "",
    opened ? stashWords.item.opened(format.date(opened)) : "",
    ...(tags ?? []),
  ]
    .filter((fact) => fact !== "")
    .join(", ");
}

/** A row, ready to print. */
export function rowView({ read, cells }: Shown, heads: readonly string[], columns = cells.length): RowView {
  const doubts = read.kind === "refused" ? [] : read.doubts;
  const of = (column: number) => doubts.find((doubt) => doubt.column === column)?.reason ?? null;
  const draft = read.kind === "refused" ? null : read.draft;
  return {
    key: String(read.row),
    at: read.row,
    row: format.count(read.row + 1),
    swatch: draft && { id: `row ${read.row}`, supply: draft.supply },
    name: draft?.supply.name ?? (cells.find((cell) => cell !== "") || words.nameless),
    facts: draft
      ? factsOf(draft)
      : cells
          .filter((cell) => cell !== "")
          .slice(1, 5)
          .join(", "),
    reason: read.kind === "new" ? null : read.reason,
    cells: Array.from({ length: columns }, (_, column) => ({
      column,
      text: cells[column] ?? "",
      doubt: of(column),
    })),
    doubts: doubts.map(({ column, reason }) => `${columnName(heads, column)}: ${reason}`),
  };
}
