import { expect, it } from "vitest";
import { type Chunk, relay } from "../../../src/store/dexie/chunks.ts";
import fc from "../../chance.ts";

const size = 4;

type Edit = Readonly<{ at: number; remove: number; add: number }>;

const edit: fc.Arbitrary<Edit> = fc.record({ at: fc.nat(60), remove: fc.nat(6), add: fc.nat(12) });

/** Rows as a database would hold them after the writes and deletions, in the order of their numbers. */
function afterWrites(
  rows: ReadonlyMap<number, readonly unknown[]>,
  written: readonly Chunk[],
  dropped: readonly number[],
) {
  const next = new Map(rows);
  for (const { chunk, records } of written) next.set(chunk, records);
  for (const chunk of dropped) next.delete(chunk);
  return new Map([...next].toSorted(([a], [b]) => a - b));
}

it("rows hold the list, in order, after any edits, none is empty, and none grows out of hand", () => {
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 30 }), (edits) => {
      let list: readonly object[] = [];
      let chunks: readonly Chunk[] = [];
      let rows: ReadonlyMap<number, readonly unknown[]> = new Map();
      for (const { at, remove, add } of edits) {
        const fresh = Array.from({ length: add }, () => ({}));
        list = list.toSpliced(Math.min(at, list.length), remove, ...fresh);
        const relaid = relay(chunks, list, size);
        chunks = relaid.chunks;
        rows = afterWrites(rows, relaid.written, relaid.dropped);
        const held = [...rows.values()];
        expect(held.flat().every((record, index) => record === list[index])).toBe(true);
        expect(held.flat()).toHaveLength(list.length);
        expect(held.every(({ length }) => length > 0 && length <= size * 2)).toBe(true);
      }
    }),
    { numRuns: 1_000 },
  );
});

it.each([
  { what: "an edit", change: (list: readonly object[]) => list.with(17, {}), writes: 1, drops: 0 },
  {
    what: "edits far apart",
    change: (list: readonly object[]) => list.with(1, {}).with(38, {}),
    writes: 2,
    drops: 0,
  },
  {
    what: "a record more at the end",
    change: (list: readonly object[]) => [...list, {}],
    writes: 1,
    drops: 0,
  },
  {
    what: "a record more in the middle",
    change: (list: readonly object[]) => list.toSpliced(18, 0, {}),
    writes: 1,
    drops: 0,
  },
  {
    what: "a record more between two rows",
    change: (list: readonly object[]) => list.toSpliced(20, 0, {}),
    writes: 1,
    drops: 0,
  },
  { what: "a record more in front", change: (list: readonly object[]) => [{}, ...list], writes: 1, drops: 0 },
  { what: "a record less", change: (list: readonly object[]) => list.toSpliced(18, 1), writes: 1, drops: 0 },
  {
    what: "a whole row less",
    change: (list: readonly object[]) => list.toSpliced(16, 4),
    writes: 0,
    drops: 1,
  },
  { what: "nothing left", change: () => [], writes: 0, drops: 10 },
  { what: "nothing changed", change: (list: readonly object[]) => [...list], writes: 0, drops: 0 },
])("$what touches $writes rows and drops $drops of ten", ({ change, writes, drops }) => {
  const list = Array.from({ length: 40 }, () => ({}));
  const { chunks } = relay([], list, size);
  const relaid = relay(chunks, change(list), size);
  expect(chunks).toHaveLength(10);
  expect([relaid.written.length, relaid.dropped.length]).toEqual([writes, drops]);
});
