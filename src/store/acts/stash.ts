import type { Colour } from "../../engine/colour/index.ts";
import type { StashItem } from "../../engine/supply/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Path, StockField } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { photoRemovals } from "./photos.ts";
import { act, put, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change, supplyName } from "./words.ts";

export const addStashItem = (item: StashItem): ActDraft =>
  act(words.addStashItem(supplyName(item)), put("stash", item));

export const addStashItems = (items: readonly StashItem[]): ActDraft =>
  act(words.addStashItem(words.items(items.length)), ...items.map((item) => put("stash", item)));

/** Brings in the things of a list, all as one act. */
export const bringInItems = (items: readonly StashItem[], list: string): ActDraft =>
  act(words.bringIn(words.items(items.length), list), ...items.map((item) => put("stash", item)));

/** Takes colours from a photo: those of things that are here already, and new things with theirs, all as one act. */
export function takeColours(
  changed: readonly Readonly<{ item: StashItem; colour: Colour }>[],
  added: readonly StashItem[],
): ActDraft {
  const colours = changed.map(({ item, colour }) => set("stash", item.id, ["supply", "colour"], colour));
  const label = words.takeColours(words.items(changed.length + added.length));
  return act(label, ...colours, ...added.map((item) => put("stash", item)));
}

/** Changes one field, `["supply", "name"]`; undefined leaves it out. For stock use `changeStock`. */
export const editStashItem = (item: StashItem, path: Path, value: unknown): ActDraft =>
  act(change(path, supplyName(item)), set("stash", item.id, path, value));

/** One field of one thing, and its new value; undefined leaves it out. */
export type ItemEdit = Readonly<{ item: StashItem; path: Path; value: unknown }>;

/** Changes fields of several things, all as one act. */
export function editStashItems(edits: readonly ItemEdit[]): ActDraft {
  const items = new Set(edits.map(({ item }) => item));
  const [first] = items;
  const of = first && items.size === 1 ? supplyName(first) : words.items(items.size);
  const paths = new Set(edits.map(({ path }) => path.join("/")));
  const [one] = edits;
  return act(
    one && paths.size === 1 ? change(one.path, of) : words.changeSeveral(of),
    ...edits.map(({ item, path, value }) => set("stash", item.id, path, value)),
  );
}

/** Takes stock in or out by an amount, so that two devices' uses both count. */
export function changeStock(item: StashItem, by: number, field: StockField = "owned"): ActDraft {
  const unit = field === "owned" ? "piece" : "sheet";
  const label = (by < 0 ? words.takeOut : words.putIn)(Math.abs(by), unit, supplyName(item));
  return act(label, { op: "add", list: "stash", id: item.id, field, by });
}

/** Removes items with their photos, and their parts in remakes and twins. */
export function removeStashItems(book: Workbook, items: readonly StashItem[]): ActDraft {
  const [first] = items;
  const what = items.length === 1 && first ? supplyName(first) : words.items(items.length);
  const removals = [...items.map(({ id }) => removal("stash", id)), ...photoRemovals(book, items)];
  return { label: words.removeStashItem(what), changes: thenMend(book, removals) };
}

export const removeStashItem = (book: Workbook, item: StashItem): ActDraft => removeStashItems(book, [item]);
