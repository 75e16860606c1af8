import type { Claim, Decided, Line } from "../../engine/price/index.ts";
import type { Supply } from "../../engine/supply/index.ts";
import type { Erratum, Kit } from "../../engine/worth/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { toldWords as words } from "../words/told.ts";
import { act, set } from "./record.ts";
import { kitName, supplyName } from "./words.ts";

const at = (line: Line, ...path: Path): Path => ["lines", { id: line.id }, ...path];

/** What sources say of a line, all of it anew. */
export const setClaims = (kit: Kit, line: Line, claims: readonly Claim[]): ActDraft =>
  act(words.setClaims(supplyName(line)), set("kits", kit.id, at(line, "claims"), claims));

const others = (line: Line, field: string): readonly Decided[] =>
  (line.decided ?? []).filter((one) => one.field !== field);

/** Goes with one of the things said of a field: it stands in the line from now on, with the reason. */
export const decide = (kit: Kit, line: Line, path: Path, decided: Decided): ActDraft =>
  act(
    words.decide(supplyName(line)),
    set("kits", kit.id, at(line, ...path), decided.value ?? undefined),
    set("kits", kit.id, at(line, "decided"), [...others(line, decided.field ?? ""), decided]),
  );

/** Leaves open again what was decided about a field. What stands in the line stays. */
export const leaveOpen = (kit: Kit, line: Line, field: string): ActDraft =>
  act(words.leaveOpen(supplyName(line)), set("kits", kit.id, at(line, "decided"), others(line, field)));

export const addVariant = (kit: Kit, line: Line, variant: Supply): ActDraft =>
  act(
    words.addVariant(supplyName({ supply: variant }), supplyName(line)),
    set("kits", kit.id, at(line, "variants"), [...(line.variants ?? []), variant]),
  );

export const removeVariant = (kit: Kit, line: Line, index: number): ActDraft =>
  act(
    words.removeVariant(supplyName(line)),
    set("kits", kit.id, at(line, "variants"), (line.variants ?? []).toSpliced(index, 1)),
  );

/** Follows another of the forms that a thing was sent in; the one followed so far takes its place among them. */
export function followVariant(kit: Kit, line: Line, index: number): ActDraft | null {
  const variant = line.variants?.[index];
  if (!variant) return null;
  return act(
    words.followVariant(supplyName({ supply: variant })),
    set("kits", kit.id, at(line, "supply"), variant),
    set("kits", kit.id, at(line, "variants"), (line.variants ?? []).with(index, line.supply)),
  );
}

/** The maker's corrections, all of them anew. */
const setErrata = (kit: Kit, label: string, errata: readonly Erratum[]): ActDraft =>
  act(label, set("kits", kit.id, ["errata"], errata));

export const addErratum = (kit: Kit, erratum: Erratum): ActDraft =>
  setErrata(kit, words.addErratum(kitName(kit)), [...(kit.errata ?? []), erratum]);

export const editErratum = (kit: Kit, index: number, erratum: Erratum): ActDraft =>
  setErrata(kit, words.editErratum(kitName(kit)), (kit.errata ?? []).with(index, erratum));

export const removeErratum = (kit: Kit, index: number): ActDraft =>
  setErrata(kit, words.removeErratum(kitName(kit)), (kit.errata ?? []).toSpliced(index, 1));
