import type { Workbook } from "../../engine/workbook/index.ts";
import type { Kit, Tier } from "../../engine/worth/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, put, putPart, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change, kitName } from "./words.ts";

export const addKit = (kit: Kit): ActDraft => act(words.addKit(kitName(kit)), put("kits", kit));

/** Changes one field of a kit; undefined leaves it out. */
export const editKit = (kit: Kit, path: Path, value: unknown): ActDraft =>
  act(change(path, kitName(kit)), set("kits", kit.id, path, value));

/** Removes a kit with its remakes, and what other kits took from its prices. */
export function removeKit(book: Workbook, kit: Kit): ActDraft {
  const remakes = (book.remakes ?? []).filter((remake) => remake.kit === kit.id).length;
  return {
    label: words.removeKit(kitName(kit), remakes),
    changes: thenMend(book, [removal("kits", kit.id)]),
  };
}

const tierName = ({ label, id }: Tier): string => label || id;

export const addTier = (kit: Kit, tier: Tier): ActDraft =>
  act(words.addTier(tierName(tier), kitName(kit)), putPart("kits", kit.id, ["tiers", { id: tier.id }], tier));

export const editTier = (kit: Kit, tier: Tier, path: Path, value: unknown): ActDraft =>
  act(
    change(path, words.tier(tierName(tier))),
    set("kits", kit.id, ["tiers", { id: tier.id }, ...path], value),
  );

export const removeTier = (kit: Kit, tier: Tier): ActDraft =>
  act(words.removeTier(tierName(tier), kitName(kit)), {
    op: "remove",
    list: "kits",
    id: kit.id,
    path: ["tiers", { id: tier.id }],
  });
