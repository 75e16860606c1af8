import type { Language } from "../../record/index.ts";
import type { StashItem } from "../../supply/index.ts";
import type { Cell } from "../table.ts";
import { ownHeads, readOwnRow } from "./read.ts";
import { ownList } from "./write.ts";
import type { WrittenCell } from "./written.ts";

/** How many things have pictures, and how many have anything else that a flat list does not hold. */
export type NotHeld = Readonly<{ pictures: number; others: number }>;

const isNothing = (value: unknown): boolean =>
  value === undefined ||
  value === null ||
  value === "" ||
  (typeof value === "object" && Object.keys(value).length === 0);

/** A record without what says nothing, its fields in one order. */
function settled(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(settled).filter((one) => !isNothing(one));
  if (typeof value !== "object" || value === null) return value;
  const fields = Object.entries(value).map(([key, field]) => [key, settled(field)] as const);
  return Object.fromEntries(
    fields.filter(([, field]) => !isNothing(field)).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );
}

/** What an item says, as text: of a field left out, null, empty or at what it stands for when unsaid, all the same. */
export function saidBy({ owned, state, photos: _, ...item }: Readonly<Record<string, unknown>>): string {
  const own = { ...(owned === 1 ? {} : { owned }), ...(state === "ok" ? {} : { state }) };
  return JSON.stringify(settled({ ...item, ...own }));
}

const readAgain = (cell: WrittenCell): Cell =>
  typeof cell === "object" && cell !== null && "number" in cell ? cell.number : cell;

/** What of these things a list cannot hold: found by writing and reading them. */
export function notHeld(items: readonly StashItem[], language: Language): NotHeld {
  const { heads, rows } = ownList(items, language);
  const found = ownHeads({ name: "", rows: [heads] });
  const others = rows.filter((row, at) => {
    if (!found) return false;
    const { item } = readOwnRow(row.map(readAgain), found, heads, { today: "", language });
    return saidBy(item) !== saidBy(items[at] ?? {});
  });
  return { pictures: items.filter(({ photos }) => (photos ?? []).length > 0).length, others: others.length };
}
