import type { StashItem, Supply } from "../../../engine/supply/index.ts";
import { stockOf } from "../../../store/index.ts";

/** A field that doubles differ in, and what each says of it, each value once. */
export type Difference = Readonly<{
  /** "name", "colour", "traits.ml", "place": a way from the item's supply, or from the item. */
  field: string;
  options: readonly Readonly<{ value: unknown; of: StashItem }>[];
}>;

/** Which option wins, by field; left out: the first. */
export type Choices = ReadonlyMap<string, number>;

const own = (record: Readonly<Record<string, unknown>>, name: string): unknown =>
  Object.hasOwn(record, name) ? record[name] : undefined;

const isGiven = (value: unknown): boolean =>
  value !== undefined && value !== null && value !== "" && !(Array.isArray(value) && value.length === 0);

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Fields of the item that are united or added up, and never chosen between. */
const united: ReadonlySet<string> = new Set([
  "id",
  "supply",
  "owned",
  "sheetsLeft",
  "twinOf",
  "photos",
  "note",
  "tags",
  "acquired",
  "keptApart",
  "state",
]);

/** What a list's row went by when it was brought in: nobody's business but the next list's. */
const unasked: ReadonlySet<string> = new Set(["importKey"]);

/** How much is known of a thing: more fields, more parts in remakes. */
const fullness = (item: StashItem, parts: ReadonlyMap<string, number>): number =>
  Object.values(item).filter(isGiven).length +
  Object.values(item.supply).filter(isGiven).length +
  Object.values(item.supply.traits ?? {}).filter(isGiven).length +
  10 * (parts.get(item.id) ?? 0);

/** The one that the others go into, first, then the rest as full as they are; of equals the earlier. */
export const byFullness = (
  items: readonly StashItem[],
  parts: ReadonlyMap<string, number>,
): readonly StashItem[] => items.toSorted((a, b) => fullness(b, parts) - fullness(a, parts));

type Read = (item: StashItem) => unknown;

function differenceIn(items: readonly StashItem[], field: string, read: Read): readonly Difference[] {
  const options: { value: unknown; of: StashItem }[] = [];
  for (const of of items) {
    const value = read(of);
    if (isGiven(value) && !options.some((one) => isSame(one.value, value))) options.push({ value, of });
  }
  return options.length > 1 ? [{ field, options }] : [];
}

const namesIn = (records: readonly object[]): readonly string[] => [
  ...new Set(records.flatMap((record) => Object.keys(record))),
];

const traitsOf = ({ supply }: StashItem): Readonly<Record<string, unknown>> => supply.traits ?? {};

const owns = (items: readonly StashItem[], field: "owned" | "sheetsLeft") =>
  items.map((item) => stockOf(item, field));
const sumOf = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

/** Whether each is a thing of its own, to be added up, or all are one that was written down more than once. */
function countDifference(items: readonly StashItem[]): readonly Difference[] {
  const [first] = items;
  const counts = owns(items, "owned");
  const [all, most] = [sumOf(counts), Math.max(...counts)];
  if (!first || all === most) return [];
  return [{ field: "owned", options: [all, most].map((value) => ({ value, of: first })) }];
}

/** Every field that the things differ in, the first option being the one that wins unless another is chosen. */
export function differences(items: readonly StashItem[]): readonly Difference[] {
  const supplyFields = namesIn(items.map(({ supply }) => supply)).filter(
    (name) => name !== "traits" && name !== "family",
  );
  const ownFields = namesIn(items).filter((name) => !united.has(name) && !unasked.has(name));
  return [
    ...countDifference(items),
    ...supplyFields.flatMap((name) => differenceIn(items, name, ({ supply }) => own(supply, name))),
    ...namesIn(items.map(traitsOf)).flatMap((name) =>
      differenceIn(items, `traits.${name}`, (item) => own(traitsOf(item), name)),
    ),
    ...ownFields.flatMap((name) => differenceIn(items, name, (item) => own(item, name))),
  ];
}

/** The value of a field: the one chosen, else the first that is given. */
function winning(items: readonly StashItem[], choices: Choices, field: string, read: Read): unknown {
  const [difference] = differenceIn(items, field, read);
  if (difference) return (difference.options[choices.get(field) ?? 0] ?? difference.options[0])?.value;
  return items.map(read).find(isGiven);
}

/** Every field of the records, each with its value; fields that nobody gives are left out. */
function gathered(
  items: readonly StashItem[],
  choices: Choices,
  names: readonly string[],
  read: (item: StashItem, name: string) => unknown,
  prefix = "",
): Readonly<Record<string, unknown>> {
  const entries = names.map((name): [string, unknown] => [
    name,
    winning(items, choices, prefix + name, (item) => read(item, name)),
  ]);
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

function mergedSupply(items: readonly StashItem[], choices: Choices, kept: StashItem): Supply {
  const traits = gathered(
    items,
    choices,
    namesIn(items.map(traitsOf)),
    (item, name) => own(traitsOf(item), name),
    "traits.",
  );
  const names = namesIn(items.map(({ supply }) => supply)).filter((name) => name !== "traits");
  const fields = gathered(items, choices, names, ({ supply }, name) => own(supply, name));
  return {
    ...fields,
    family: kept.supply.family,
    ...(Object.keys(traits).length > 0 && { traits }),
  } as Supply; // fields of supplies of one family, each from one that was read
}

const unionOf = (lists: readonly (readonly string[] | null | undefined)[]): readonly string[] => [
  ...new Set(lists.flatMap((list) => list ?? [])),
];

const listField = (name: string, values: readonly string[]) =>
  values.length > 0 ? { [name]: [...values] } : {};

/** The state of several as one: fine as long as any of them is. */
const bestState = (items: readonly StashItem[]): StashItem["state"] =>
  (["ok", "low", "empty", "dried"] as const).find((state) =>
    items.some((item) => (item.state ?? "ok") === state),
  );

/** Stock added up, or counted once; left out where it is what a field left out stands for. */
function stockFields(items: readonly StashItem[], isOne: boolean) {
  const total = (field: "owned" | "sheetsLeft") =>
    isOne ? Math.max(...owns(items, field)) : sumOf(owns(items, field));
  const [owned, sheets] = [total("owned"), total("sheetsLeft")];
  const countsSheets =
    items.some((item) => item.sheetsLeft !== undefined && item.sheetsLeft !== null) || sheets > 0;
  return { owned, ...(countsSheets && { sheetsLeft: sheets }) };
}

/**
 * Several things as one: stock added up unless it is chosen to be counted once, photos, tags, twins and notes united, the earliest day it was got, fine if any
 * is; of every other field the value chosen, else that of the fullest. Its id is that of the first.
 * @param items the one kept first; of one family
 */
export function mergedItem(items: readonly [StashItem, ...StashItem[]], choices: Choices): StashItem {
  const [kept] = items;
  const ids = new Set(items.map(({ id }) => id));
  const others = namesIn(items).filter((name) => !united.has(name));
  const acquired = items.flatMap((item) => item.acquired ?? []).toSorted()[0];
  const notes = unionOf(items.map(({ note }) => (note ? [note.trim()] : [])));
  const state = bestState(items);
  const apart = unionOf(
    items.map((item) => (Array.isArray(item.keptApart) ? item.keptApart.map(String) : [])),
  );
  return {
    ...gathered(items, choices, others, own),
    id: kept.id,
    supply: mergedSupply(items, choices, kept),
    ...stockFields(items, choices.get("owned") === 1),
    ...(state && state !== "ok" && { state }),
    ...(acquired && { acquired }),
    ...(notes.length > 0 && { note: notes.join("\n") }),
    ...listField("photos", unionOf(items.map(({ photos }) => photos))),
    ...listField("tags", unionOf(items.map(({ tags }) => tags))),
    ...listField(
      "twinOf",
      unionOf(items.map(({ twinOf }) => twinOf)).filter((id) => !ids.has(id)),
    ),
    ...listField(
      "keptApart",
      apart.filter((id) => !ids.has(id)),
    ),
  };
}
