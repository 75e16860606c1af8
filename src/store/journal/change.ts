import type { Workbook } from "../../engine/workbook/index.ts";

/** The lists of a workbook, in the order a file shows them. */
export const listNames = [
  "markets",
  "rates",
  "shops",
  "parcels",
  "kinships",
  "photos",
  "stash",
  "kits",
  "remakes",
  "requests",
] as const;

export type ListName = (typeof listNames)[number];

/** A record of one list. */
export type RecordOf<L extends ListName> = NonNullable<Workbook[L]>[number];

/** Names one element of a list by what its fields hold: `{ id: "l1" }`, `{ line: "l1" }`. Null: not given. */
export type Match = Readonly<Record<string, string | number | boolean | null>>;

/** The way to a place inside a record: field names, and matches where a list is passed through. */
export type Path = readonly (string | Match)[];

/** What a field or list held before there was anything in it, so that an undo can leave it as it was. */
export type Blank = "absent" | "null";

/**
 * One change to a workbook, small enough that two devices' changes to one record can both stand.
 *
 * `list` "book" is the single record of all that is in no list (name, home, weights, unknown fields); its
 * `id` is "book". `id` names the record in its list (`keyOf`).
 * - put: a whole record; with `path`, one element of a list inside it (the path ends in the element's match,
 *   and the element carries those fields). It keeps its place, or comes last when new; `before` moves it in
 *   front of that element, null to the end.
 * - set: one field, at a path that ends in its name. `value` left out leaves the field out.
 * - remove: a record, or with `path` an element. `blank` says what an emptied list becomes.
 * - add: stock, as an amount and never a total, so that two devices' uses both count.
 */
export type Change =
  | Readonly<{ op: "put"; list: ListName; id: string; path?: Path; record: unknown; before?: Match | null }>
  | Readonly<{ op: "set"; list: ListName | "book"; id: string; path: Path; value?: unknown }>
  | Readonly<{ op: "remove"; list: ListName; id: string; path?: Path; blank?: Blank }>
  | Readonly<{ op: "add"; list: "stash"; id: string; field: StockField; by: number; blank?: Blank }>;

export type StockField = "owned" | "sheetsLeft";

export type ChangeOf<Op extends Change["op"]> = Extract<Change, { op: Op }>;
