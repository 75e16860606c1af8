import { describe, expect, it } from "vitest";
import {
  guessMapping,
  type Mapping,
  type Understood,
  understand,
  understandItems,
} from "../../../src/engine/intake/index.ts";
import { StashItemSchema } from "../../../src/engine/supply/index.ts";
import { around, tableOf } from "./around.ts";

const read = (lines: string, more: Partial<Mapping> = {}, about = around()) => {
  const table = tableOf(lines);
  return understand(table, { ...guessMapping(table, "SEK", about.language), ...more }, about);
};
const drafts = (rows: readonly Understood[]) =>
  rows.flatMap((row) => (row.kind === "new" ? [row.draft] : []));
const doubts = (row: Understood | undefined) =>
  row && row.kind !== "refused" ? row.doubts.map(({ column, reason }) => `${column}: ${reason}`) : [];

describe("a row", () => {
  it("is a thing with all that its cells say", () => {
    const [row] = read(`
Brand|Range|Colour|No.|Type|Qty|Hex|Where|Price (SEK)|Bought|Condition|Tags|Notes
Kvist|Fjord|Moss|12|Alcohol marker, brush tip|2|6b7d3a|blue tin|39,50|2024-11-02|low|#warm, new|from a friend`);
    expect(row?.kind === "new" && { ...row.draft, importKey: "" }).toEqual({
      supply: {
        family: "marker",
        name: "Alcohol marker, moss",
        maker: "Kvist",
        line: "Fjord",
        code: "12",
        colour: { name: "Moss", hex: "#6b7d3a", from: "typed" },
        traits: { base: "alcohol", tips: ["brush"] },
      },
      owned: 2,
      state: "low",
      acquired: "2024-11-02",
      paid: { amount: "39.50", currency: "SEK" },
      place: "blue tin",
      note: "from a friend",
      tags: ["warm", "new"],
      importKey: "",
    });
    expect(doubts(row)).toEqual([]);
  });

  it("in Swedish as well", () => {
    const [paper, liner] = drafts(
      read(
        `
Namn|Slag|Storlek|Vikt|Ark|Ark kvar|Skick|Bredd
Stora blocket|Akvarellblock|A4|300|20|12|ny|
Tunna|fineliner|||||uttorkad|0,3`,
        {},
        around({ language: "sv" }),
      ),
    );
    expect(paper?.supply).toEqual({
      family: "paper",
      name: "Stora blocket",
      traits: { use: "watercolour", size: "A4", gsm: 300, sheets: 20, bound: "block" },
    });
    expect(paper?.sheetsLeft).toBe(12);
    expect(liner?.supply).toEqual({ family: "liner", name: "Tunna", traits: { widthMm: 0.3 } });
    expect(liner?.state).toBe("dried");
  });

  it("of nothing but text is read as a line", () => {
    const [draft] = drafts(read("2 gouache tubes moss 15 ml\nkneaded eraser"));
    expect(draft?.owned).toBe(2);
    expect(draft?.supply).toEqual({
      family: "paint",
      name: "Gouache, moss",
      colour: { name: "moss", hex: "#769958" },
      traits: { medium: "gouache", form: "tube", ml: 15 },
    });
  });

  it("keeps what is not understood in the note, and says which cell", () => {
    const [row] = read("Name|Type|Bought|Qty|Hex\nMoss|marker|last spring|lots|greenish");
    expect(row?.kind === "new" && row.draft.note).toBe("Hex: greenish\nQty: lots\nBought: last spring");
    expect(doubts(row).toSorted()).toEqual([
      "2: “last spring” was not understood; it is kept in the note",
      "3: “lots” was not understood; it is kept in the note",
      "4: “greenish” was not understood; it is kept in the note",
    ]);
  });

  it("keeps a trait that such a thing does not have, and a kind that is not known", () => {
    const [marker, odd] = read("Name|Type|Weight\nMoss|marker|300\nThing|whatsit|");
    expect(doubts(marker)).toEqual(["2: “300” is nothing this kind of thing has; it is kept in the note"]);
    expect(marker?.kind === "new" && marker.draft.note).toBe("Weight: 300");
    expect(doubts(odd)).toEqual(["1: “whatsit” is no kind known here; it is kept in the note"]);
    expect(odd?.kind === "new" && odd.draft.supply.family).toBe("other");
  });

  it("that does not say its kind is what the person says, else open and marked", () => {
    const lines = "Brand|Colour|Hex\nKvist|Moss|#6b7d3a";
    const [open] = read(lines);
    expect(open?.kind === "new" && open.draft.supply.family).toBe("other");
    expect(doubts(open)).toEqual(["0: nothing tells what kind of thing it is"]);
    const [said] = read(lines, { family: "marker" });
    expect(said?.kind === "new" && said.draft.supply.family).toBe("marker");
    expect(doubts(said)).toEqual([]);
  });

  it.each([
    ["Name|Qty\nTotal|12", "a sum of the list, no thing"],
    ["Namn|Antal\nSumma:|12", "a sum of the list, no thing"],
    ["Name|Qty\nname|qty\nName|Qty", "the heads once more"],
    ["Name|Qty|Where\n|12|drawer", "nothing says what it is"],
  ])("of %j is no thing: %s", (lines, reason) =>
    expect(read(lines).find((row) => row.kind === "refused")).toMatchObject({ reason }),
  );

  it("that is empty, or above the heads, is passed over", () =>
    expect(read("My list|\n|\nName|Qty\n|\nMoss|1").map(({ row }) => row)).toEqual([4]));

  it("gives what the format takes, whatever is in it", () => {
    const hostile = [
      "__proto__",
      "constructor",
      "=1+1",
      "<img src=x>",
      "\ud800",
      "1e400",
      "javascript:x",
      "NaN",
    ];
    const fields = [
      "text",
      "name",
      "kind",
      "maker",
      "colour",
      "hex",
      "size",
      "owned",
      "paid",
      "acquired",
      "gtin",
      "tags",
      "state",
    ] as const;
    const table = { name: "x", rows: hostile.map((text) => fields.map(() => text)) };
    const rows = understand(table, { head: null, columns: fields, currency: "SEK", family: null }, around());
    expect(drafts(rows)).toHaveLength(hostile.length);
    for (const draft of drafts(rows))
      expect(StashItemSchema.safeParse({ id: "st-1", ...draft }).success).toBe(true);
    expect(Object.prototype).not.toHaveProperty("polluted");
  });
});

describe("what is here already", () => {
  const list =
    "Name|Type|Code|Brand|Where|Qty\nMoss|marker|12|Kvist|tin|2\nBrick|marker|13|Kvist|tin|1\nMoss|marker|12|Kvist|tin|2";
  const stashOf = (rows: readonly Understood[]) =>
    drafts(rows).map((draft, at) => ({ id: `st-${at}`, ...draft }));

  it("is every row of a list that was brought in, also one that stands twice", () => {
    const first = read(list);
    expect(first.map(({ kind }) => kind)).toEqual(["new", "new", "new"]);
    expect(doubts(first[2])).toEqual(["0: the same as row 2"]);
    const again = read(list, {}, around({ stash: stashOf(first) }));
    expect(again.map((row) => row.kind === "here" && row.reason)).toEqual(Array(3).fill("brought in before"));
  });
  it("also when its columns are read otherwise, and when the thing was renamed since", () => {
    const stash = stashOf(read(list)).map((item) => ({
      ...item,
      supply: { ...item.supply, name: "Mine", code: "x" },
    }));
    const again = read(list, { columns: ["name", null, null, null, "note", null] }, around({ stash }));
    expect(again.map(({ kind }) => kind)).toEqual(["here", "here", "here"]);
  });
  it("is the same product in the same place, with how many each says", () => {
    const stash = [
      {
        id: "a",
        owned: 5,
        place: "Tin",
        supply: { family: "marker", name: "moss", code: "12", maker: "KVIST" },
      },
      { id: "b", place: "drawer", supply: { family: "marker", name: "Brick", code: "13", maker: "Kvist" } },
    ] as const;
    const rows = read(
      list,
      {},
      around({ stash: stash.map((item) => ({ ...item, supply: { ...item.supply } })) }),
    );
    expect(rows.map((row) => (row.kind === "here" ? row.reason : row.kind))).toEqual([
      "already here, where you have 5 and the list says 2",
      "new",
      "already here, where you have 5 and the list says 2",
    ]);
  });
  it("is not what has another colour under the same name", () => {
    const stash = [
      { id: "a", supply: { family: "other" as const, name: "Tube", colour: { hex: "#000000" } } },
    ];
    expect(read("Name|Hex\nTube|#ffffff", {}, around({ stash }))[0]?.kind).toBe("new");
    expect(read("Name|Hex\nTube|#000000", {}, around({ stash }))[0]?.kind).toBe("here");
  });
});

describe("a workbook's stash", () => {
  const items = [
    {
      id: "x",
      supply: { family: "marker" as const, name: "Moss" },
      owned: 2,
      twinOf: ["y"],
      fromKit: "k",
      photos: ["p"],
      extra: 1,
    },
  ];
  it("comes without what ties it to the rest of that workbook, and with what else it holds", () => {
    const [row] = understandItems(items, [], "en");
    expect(row?.kind === "new" && Object.keys(row.draft).toSorted()).toEqual([
      "extra",
      "importKey",
      "owned",
      "supply",
    ]);
  });
  it("adds nothing twice", () => {
    const stash = drafts(understandItems(items, [], "en")).map((draft) => ({ id: "n", ...draft }));
    expect(understandItems(items, stash, "en")[0]?.kind).toBe("here");
    expect(understandItems(items, items, "en")[0]?.kind).toBe("here");
  });
});
