import { expect, it } from "vitest";
import { canonicalJson, type Workbook } from "../../../src/engine/workbook/index.ts";
import { changeStock, editLine, editStashItem, setPick } from "../../../src/store/acts/index.ts";
import { type Act, applyChanges, type Change, inJournalOrder } from "../../../src/store/journal/index.ts";
import { prepare } from "../../../src/store/prepare.ts";
import fc from "../../chance.ts";

// Quality bar, section 6: the journal must be one that two devices' acts can later be merged from.

const supply = { family: "other" as const, name: "ash" };
const start: Workbook = {
  format: "understudy-workbook",
  version: 1,
  stash: [
    { id: "a", supply, owned: 50 },
    { id: "b", supply, owned: 50 },
  ],
  kits: [
    {
      id: "k",
      maker: "m",
      period: "2026-04",
      lines: [
        { id: "l1", supply },
        { id: "l2", supply },
      ],
    },
  ],
  remakes: [{ id: "r", kit: "k", started: "2026-05-02" }],
};
const [kit] = start.kits ?? [];
const [remake] = start.remakes ?? [];

/** The acts that a device does on its own, from the shared start. */
function journal(device: string, changes: readonly (readonly Change[])[]): readonly Act[] {
  const acts: Act[] = [];
  changes.reduce((book, change, counter) => {
    const draft = { label: "", kind: "do" as const, at: "2026-05-02T10:00:00.000Z", changes: change };
    const prepared = prepare(book, draft, { device, counter, revision: counter });
    if (!prepared.ok) throw new Error(prepared.fault.problem);
    acts.push(prepared.value.act);
    return prepared.value.book;
  }, start);
  return acts;
}

const replay = (acts: readonly Act[]): Workbook =>
  acts.toSorted(inJournalOrder).reduce((book, { changes }) => {
    const done = applyChanges(book, changes);
    if (!done.ok) throw new Error(done.fault.problem);
    return done.value.book;
  }, start);

const text = fc.string({ maxLength: 4 });
const stash = fc.constantFrom(...(start.stash ?? []));
const stock = fc.tuple(stash, fc.constantFrom(-1, 1)).map(([item, by]) => changeStock(item, by).changes);
const note = (field: string) =>
  fc.tuple(stash, text).map(([item, value]) => editStashItem(item, [field], value).changes);
const inKit = (line: string, field: string) =>
  text.map((value) => {
    const found = kit?.lines?.find(({ id }) => id === line);
    if (!kit || !found) throw new Error("no such line");
    return editLine(kit, found, ["supply", field], value).changes;
  });
const pick = (line: string) =>
  text.map((value) => {
    const found = kit?.lines?.find(({ id }) => id === line);
    if (!remake || !found) throw new Error("no such line");
    return setPick(remake, found, { note: value }).changes;
  });

const ofOne = fc.array(fc.oneof(stock, note("place"), inKit("l1", "maker"), pick("l1")), { maxLength: 10 });
const ofTwo = fc.array(fc.oneof(stock, note("note"), inKit("l1", "code"), inKit("l2", "maker"), pick("l2")), {
  maxLength: 10,
});

const owned = (book: Workbook) => book.stash?.map((item) => item.owned ?? 0) ?? [];

it("the acts of two devices, taken together in any order of arrival, give one book in which every edit stands", () => {
  fc.assert(
    fc.property(ofOne, ofTwo, (one, two) => {
      const [a, b] = [journal("dev-a", one), journal("dev-b", two)];
      const merged = replay([...a, ...b]);
      expect(canonicalJson(replay([...b, ...a]))).toBe(canonicalJson(merged));
      const [alone, other] = [replay(a), replay(b)];
      expect(owned(merged)).toEqual(
        owned(alone).map((count, index) => count + (owned(other)[index] ?? 0) - 50),
      );
      for (const [index, item] of (merged.stash ?? []).entries()) {
        expect([item.place, item.note]).toEqual([alone.stash?.[index]?.place, other.stash?.[index]?.note]);
      }
      const line = (book: Workbook, at: number) => book.kits?.[0]?.lines?.[at]?.supply;
      expect([line(merged, 0)?.maker, line(merged, 0)?.code, line(merged, 1)?.maker]).toEqual([
        line(alone, 0)?.maker,
        line(other, 0)?.code,
        line(other, 1)?.maker,
      ]);
      const picked = (book: Workbook, of: string) =>
        book.remakes?.[0]?.picks?.find(({ line }) => line === of);
      expect([picked(merged, "l1"), picked(merged, "l2")]).toEqual([
        picked(alone, "l1"),
        picked(other, "l2"),
      ]);
    }),
    { numRuns: 300 },
  );
});
