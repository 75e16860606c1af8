import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { saidBy } from "../../src/engine/intake/index.ts";
import type { StashItem } from "../../src/engine/supply/index.ts";
import { listKinds } from "../../src/workers/out/kinds.ts";
import { listFile } from "../../src/workers/out/list-file.ts";
import { createSession } from "../../src/workers/session.ts";
import fc from "../chance.ts";
import { around } from "../unit/intake/around.ts";

// Quality bar X5: 50,000 cells that begin as a formula may, in all; each comes back as it was.
const cells = 50_000;
const [things, columns] = [80, 9];

const begins = fc.constantFrom(
  "=",
  "+",
  "-",
  "@",
  "\t",
  "\r",
  "\0",
  "'",
  "'=",
  "''-",
  "=cmd|' /C calc'!A0",
  "-1",
  "+1",
  "",
);
const rest = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.string({ unit: "binary", maxLength: 6 }),
  fc.constantFrom(
    "1+1",
    '"',
    ",",
    ";",
    "\n",
    "\r\n",
    "\\u0041",
    "_x0041_",
    "<a>&amp;",
    "  ",
    "\ud800",
    "\ufffe",
    "\u00a0",
  ),
);
const text = fc.tuple(begins, rest).map((parts) => parts.join(""));

const thing = fc.record({
  supply: fc.record({
    family: fc.constantFrom("paint" as const, "other" as const),
    name: text,
    maker: text,
    line: text,
    code: text,
    safety: text,
    colour: fc.record({ name: text }),
  }),
  place: text,
  note: text,
  tags: fc.tuple(text).map(([tag]) => (tag.trim() === "" ? [] : [tag])),
});
const stash = fc
  .array(thing, { minLength: things, maxLength: things })
  .map((all): readonly StashItem[] => all.map((one, at) => ({ id: `st-${at}`, ...one })));

async function back(bytes: Uint8Array): Promise<readonly string[]> {
  const session = createSession();
  await session.openFile(bytes, "list");
  session.guess(0, "SEK", "en");
  session.readItems(around());
  return session.drafts([]).map((draft) => saidBy(draft));
}

/** Whether a spreadsheet would run a cell of CSV; a number is none that it runs. */
const runs = (cell: string): boolean => /^[=+\-@\t\r\0]/.test(cell) && !/^[+-]?\d+(?:\.\d+)?$/.test(cell);

describe.each(listKinds)("%s", (kind) => {
  it("keeps cells that begin as a formula may: inert, and back as they were", async () => {
    const numRuns = Math.ceil(cells / listKinds.length / (things * columns));
    await fc.assert(
      fc.asyncProperty(stash, async (items) => {
        const bytes = await listFile(kind, items, "en", "Stash");
        expect(await back(bytes)).toEqual(items.map((item) => saidBy(item)));
        if (kind !== "csv") return;
        const { data } = Papa.parse<string[]>(new TextDecoder().decode(bytes), {
          newline: "\r\n",
          delimiter: ",",
        });
        expect(data.flat().filter(runs)).toEqual([]);
      }),
      { numRuns },
    );
  }, 60_000);
});
