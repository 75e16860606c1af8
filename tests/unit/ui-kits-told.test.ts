import { describe, expect, it } from "vitest";
import { type Line, LineSchema } from "../../src/engine/price/index.ts";
import type { Workbook } from "../../src/engine/workbook/index.ts";
import type { Kit } from "../../src/engine/worth/index.ts";
import {
  addErratum,
  addVariant,
  decide,
  editErratum,
  followVariant,
  leaveOpen,
  removeErratum,
  removeVariant,
  setClaims,
} from "../../src/store/acts/index.ts";
import type { ActDraft } from "../../src/store/index.ts";
import { applyChanges } from "../../src/store/journal/apply.ts";
import { toldOf } from "../../src/ui/kits/view/claims.ts";
import { conflictsOf, decidedFor, pathOf, valueText } from "../../src/ui/kits/view/conflicts.ts";
import { contentsView } from "../../src/ui/kits/view/line-rows.ts";
import { format } from "../../src/ui/words/index.ts";

const pad: Line = LineSchema.parse({
  id: "l1",
  supply: { family: "paper", name: "Pad", traits: { gsm: 120 } },
  claims: [
    { field: "gsm", value: 120, sure: "seen", source: "the card", date: "2026-04-12" },
    { field: "traits.gsm", value: "90", sure: "told", source: "a post", date: "2026-04-13" },
  ],
});
const kitOf = (line: Line): Kit => ({ id: "k", maker: "Nordkit", period: "2026-04", lines: [line] });

/** The kit after an act, through the journal's own changes. */
function kitAfter(kit: Kit, act: ActDraft | null): Kit {
  const book: Workbook = { format: "understudy-workbook", version: 1, kits: [kit] };
  expect(act).not.toBeNull();
  const done = applyChanges(book, act?.changes ?? []);
  if (!done.ok) throw new Error(JSON.stringify(done));
  const [first] = done.value.book.kits ?? [];
  if (!first) throw new Error("no kit");
  return first;
}
const lineAfter = (line: Line, act: ActDraft | null): Line => {
  const [first] = kitAfter(kitOf(line), act).lines ?? [];
  if (!first) throw new Error("no line");
  return first;
};

describe("what sources say differently", () => {
  it("is one conflict under both names of a field, a number noted as text being a number", () => {
    const [conflict] = conflictsOf(pad);
    expect(conflict?.field).toBe("traits.gsm");
    expect(conflict?.sayings.map(({ value, stands, fits }) => [value, stands, fits])).toEqual([
      [120, true, true],
      [90, false, true],
    ]);
    expect(toldOf(pad)).toMatchObject({ text: "the card says 120, a post 90", differs: true });
  });

  it("is also what stands in the line, where a source says another thing", () => {
    const line = { ...pad, claims: [{ field: "qty", value: 3, source: "the film" }] };
    expect(toldOf(line)).toMatchObject({ text: "the film says 3, the line 1", differs: true });
  });

  it("is no conflict over a name put into better words, an unreadable word, or nothing in the line", () => {
    const claims = [
      { field: "name", value: "Drawing pad", source: "the card" },
      { field: "surface", value: "rough", sure: "unreadable" as const, source: "the card" },
      { field: "maker", value: "Murravik", source: "a post" },
    ];
    expect(conflictsOf({ ...pad, claims })).toEqual([]);
  });

  it("shows a value that cannot stand in its field, and does not offer it", () => {
    const claims = [{ field: "gsm", value: "heavy", source: "a post" }];
    const [conflict] = conflictsOf({ ...pad, claims });
    expect(conflict?.sayings.map(({ value, fits }) => [value, fits])).toEqual([
      ["heavy", false],
      [120, true],
    ]);
  });

  it("is settled in one act with a reason, and open again when something new is said", () => {
    const [conflict] = conflictsOf(pad);
    const saying = conflict?.sayings[1];
    if (!conflict || !saying) throw new Error("no conflict");
    const decided = decidedFor(conflict, saying, " weighed it ", "2026-05-01");
    const settled = lineAfter(pad, decide(kitOf(pad), pad, pathOf(conflict.field), decided));
    expect(settled.supply.traits).toEqual({ gsm: 90 });
    expect(settled.decided).toEqual([
      { field: "traits.gsm", value: 90, against: [120], reason: "weighed it", date: "2026-05-01" },
    ]);
    expect(toldOf(settled)).toEqual({
      text: "the card and a post",
      differs: false,
      note: "Went with weight 90: weighed it.",
    });
    expect(contentsView(kitOf(settled)).leadMore).not.toContain("differ");

    const more = [...(settled.claims ?? []), { field: "gsm", value: 100, source: "a film" }];
    const again = lineAfter(settled, setClaims(kitOf(settled), settled, more));
    expect(toldOf(again).differs).toBe(true);
    const open = lineAfter(settled, leaveOpen(kitOf(settled), settled, "traits.gsm"));
    expect(toldOf(open).differs).toBe(true);
    expect(open.supply.traits).toEqual({ gsm: 90 });
  });

  it("is said in the words of the screen", () => {
    expect(valueText("paper", "traits.size", [240, 320])).toBe("240 × 320 mm");
    expect(valueText("marker", "traits.tips", ["brush", "fine"])).toBe("brush, fine");
    expect(valueText("paper", "acidFree", true)).toBe("yes");
    expect(valueText("paper", "code", null)).toBe("an unreadable word");
  });
});

describe("a thing sent in several forms", () => {
  const moss: Line = { id: "l1", supply: { family: "paint", name: "Gouache, moss" } };
  const sand = { family: "paint" as const, name: "Gouache, sand" };

  it("goes by another form in one act, and back to the very same line", () => {
    const both = lineAfter(moss, addVariant(kitOf(moss), moss, sand));
    expect(both.variants).toEqual([sand]);
    const other = lineAfter(both, followVariant(kitOf(both), both, 0));
    expect(other.supply).toEqual(sand);
    expect(other.variants).toEqual([moss.supply]);
    expect(lineAfter(other, followVariant(kitOf(other), other, 0))).toEqual(both);
    expect(lineAfter(both, removeVariant(kitOf(both), both, 0)).variants).toEqual([]);
  });

  it("cannot go by a form that is not there", () => {
    expect(followVariant(kitOf(moss), moss, 0)).toBeNull();
  });
});

describe("the maker's corrections", () => {
  it("are added, changed and removed, and stand beside the lines they are about", () => {
    const kit = kitOf(pad);
    const first = kitAfter(kit, addErratum(kit, { date: "2026-05-01", lines: ["l1"], text: "It is 90 g." }));
    expect(contentsView(first).rows[0]?.corrections).toEqual([
      `Corrected by the maker on ${format.date("2026-05-01")}: It is 90 g.`,
    ]);
    const second = kitAfter(first, editErratum(first, 0, { lines: [], text: "All pads are 90 g." }));
    expect(contentsView(second).rows[0]?.corrections).toEqual([]);
    expect(second.errata).toEqual([{ lines: [], text: "All pads are 90 g." }]);
    expect(kitAfter(second, removeErratum(second, 0)).errata).toEqual([]);
  });
});
