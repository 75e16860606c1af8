import type { Family, StashItem } from "../../../engine/supply/index.ts";
import type { ItemEdit, Path } from "../../../store/index.ts";

/** What is to be the same for all that were chosen: a field left out stays as it is, null is left open from now on. */
export type BulkEdit = Readonly<{
  place?: string | null;
  state?: StashItem["state"] | null;
  acquired?: string | null;
  paid?: StashItem["paid"] | null;
  boughtForThis?: boolean | null;
  maker?: string | null;
  line?: string | null;
  tagsOn: readonly string[];
  tagsOff: readonly string[];
  /** By trait; undefined leaves the trait open. */
  traits: ReadonlyMap<string, unknown>;
}>;

export const noEdit: BulkEdit = { tagsOn: [], tagsOff: [], traits: new Map() };

const ownFields = ["place", "state", "acquired", "paid", "boughtForThis"] as const;
const supplyFields = ["maker", "line"] as const;

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

function fieldEdit(item: StashItem, path: Path, now: unknown, wanted: unknown): readonly ItemEdit[] {
  return isSame(now, wanted) ? [] : [{ item, path, value: wanted ?? undefined }];
}

function tagEdit(item: StashItem, { tagsOn, tagsOff }: BulkEdit): readonly ItemEdit[] {
  const now = item.tags ?? [];
  const wanted = [...new Set([...now.filter((tag) => !tagsOff.includes(tag)), ...tagsOn])];
  return isSame(now, wanted) ? [] : [{ item, path: ["tags"], value: wanted.length > 0 ? wanted : undefined }];
}

function traitEdits(item: StashItem, traits: BulkEdit["traits"]): readonly ItemEdit[] {
  const held: Readonly<Record<string, unknown>> = item.supply.traits ?? {};
  return [...traits].flatMap(([trait, wanted]) =>
    fieldEdit(item, ["supply", "traits", trait], Object.hasOwn(held, trait) ? held[trait] : null, wanted),
  );
}

function editsOf(item: StashItem, edit: BulkEdit): readonly ItemEdit[] {
  const state = edit.state === "ok" ? null : edit.state; // fine is what a state left out stands for
  const wanted = { ...edit, ...(edit.state === undefined ? {} : { state }) };
  const now = item.state === "ok" ? { ...item, state: null } : item;
  return [
    ...ownFields.flatMap((field) =>
      wanted[field] === undefined ? [] : fieldEdit(item, [field], now[field], wanted[field]),
    ),
    ...supplyFields.flatMap((field) =>
      wanted[field] === undefined
        ? []
        : fieldEdit(item, ["supply", field], item.supply[field], wanted[field]),
    ),
    ...tagEdit(item, edit),
    ...traitEdits(item, edit.traits),
  ];
}

/** What is to change of each, things that have it already left alone. */
export const bulkEdits = (items: readonly StashItem[], edit: BulkEdit): readonly ItemEdit[] =>
  items.flatMap((item) => editsOf(item, edit));

/** What all of them hold, or that they differ. */
export type Common<T> = Readonly<{ value: T | null; differ: boolean }>;

export function commonOf<T>(
  items: readonly StashItem[],
  read: (item: StashItem) => T | null | undefined,
): Common<T> {
  const [first] = items;
  const value = (first && read(first)) ?? null;
  const differ = items.some((item) => !isSame(read(item), value));
  return { value: differ ? null : value, differ };
}

/** The family that all belong to, or null. */
export const commonFamily = (items: readonly StashItem[]): Family | null =>
  commonOf(items, ({ supply }) => supply.family).value;

/** Every tag of any of them, in order. */
export const tagsIn = (items: readonly StashItem[]): readonly string[] =>
  [...new Set(items.flatMap(({ tags }) => tags ?? []))].toSorted((a, b) => a.localeCompare(b));
