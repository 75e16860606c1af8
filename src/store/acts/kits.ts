import type { Workbook } from "../../engine/workbook/index.ts";
import type { Kit, Tier } from "../../engine/worth/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { act, put, putPart, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change, counted, kitName } from "./words.ts";

export const addKit = (kit: Kit): ActDraft => act(`Log the kit ${kitName(kit)}`, put("kits", kit));

/** Changes one field of a kit; undefined leaves it out. */
export const editKit = (kit: Kit, path: Path, value: unknown): ActDraft =>
  act(change(path, kitName(kit)), set("kits", kit.id, path, value));

/** Removes a kit with its remakes, and what other kits took from its prices. */
export function removeKit(book: Workbook, kit: Kit): ActDraft {
  const remakes = (book.remakes ?? []).filter((remake) => remake.kit === kit.id).length;
  const too = remakes > 0 ? ` and ${counted(remakes, "remake")}` : "";
  return {
    label: `Remove the kit ${kitName(kit)}${too}`,
    changes: thenMend(book, [removal("kits", kit.id)]),
  };
}

const tierName = ({ label, id }: Tier): string => label || id;

export const addTier = (kit: Kit, tier: Tier): ActDraft =>
  act(
    `Add the tier ${tierName(tier)} to ${kitName(kit)}`,
    putPart("kits", kit.id, ["tiers", { id: tier.id }], tier),
  );

export const editTier = (kit: Kit, tier: Tier, path: Path, value: unknown): ActDraft =>
  act(
    change(path, `the tier ${tierName(tier)}`),
    set("kits", kit.id, ["tiers", { id: tier.id }, ...path], value),
  );

export const removeTier = (kit: Kit, tier: Tier): ActDraft =>
  act(`Remove the tier ${tierName(tier)} from ${kitName(kit)}`, {
    op: "remove",
    list: "kits",
    id: kit.id,
    path: ["tiers", { id: tier.id }],
  });
