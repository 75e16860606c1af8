import { describe, expect, it } from "vitest";
import { type Line, possiblePrecedents } from "../../src/engine/price/index.ts";
import { readWorkbook, writeWorkbook } from "../../src/engine/workbook/index.ts";
import type { Kit } from "../../src/engine/worth/index.ts";
import { copiedLines } from "../../src/ui/kits/view/copy-kit.ts";
import { takenView } from "../../src/ui/kits/view/entry.ts";
import { countedIn, suggestionsFor } from "../../src/ui/kits/view/suggest.ts";

// No outside source: what is suggested first and what a copy keeps are the project's own. Names are invented.
const line = (id: string, name: string, more: Partial<Line> = {}): Line => ({
  id,
  supply: { family: "paint", name, traits: { medium: "gouache" } },
  ...more,
});
const price = { amount: "4.90", currency: "EUR" };
const april: Kit = {
  id: "kit-a",
  maker: "Nordkit",
  title: "April light",
  period: "2026-04",
  lines: [
    line("l1", "Gouache, moss", {
      qty: 2,
      want: "0.5",
      evidence: [{ id: "e1", kind: "list", price }],
      settled: [{ kind: "street", price }],
    }),
    line("l2", "Gouache, sand", { exclusive: true, evidence: [{ id: "e1", kind: "shop", price }] }),
  ],
};
const may: Kit = {
  id: "kit-m",
  maker: "Nordkit",
  period: "2026-05",
  lines: [line("l1", "Gouache, mist"), line("l2", "Gouache, moss")],
};
const other: Kit = { id: "kit-o", maker: "Sydkit", period: "2026-06", lines: [line("l1", "Gouache, mould")] };

describe("an earlier kit as a start", () => {
  const copied = copiedLines(april, { withPrices: true, source: "as in April light", today: "2026-06-01" });

  it("gives its lines ids of their own, and names where they are from", () => {
    expect(copied.map(({ supply, qty, want, exclusive }) => [supply.name, qty, want, exclusive])).toEqual([
      ["Gouache, moss", 2, "0.5", undefined],
      ["Gouache, sand", undefined, undefined, true],
    ]);
    expect(new Set(copied.map(({ id }) => id)).size).toBe(2);
    expect(copied[0]?.claims).toEqual([
      {
        field: "name",
        value: "Gouache, moss",
        sure: "believed",
        source: "as in April light",
        date: "2026-06-01",
      },
    ]);
  });

  it("counts list prices in as precedents, and takes no price over itself", () => {
    expect(copied[0]?.evidence).toEqual([
      { id: "e1", kind: "precedent", line: "kit-a/l1", date: "2026-06-01" },
    ]);
    expect(copied[1]).not.toHaveProperty("evidence");
    expect(copied.some((one) => one.settled)).toBe(false);
    const bare = copiedLines(april, { withPrices: false, source: "x", today: "2026-06-01" });
    expect(bare.some((one) => one.evidence)).toBe(false);
  });

  it("is a workbook like any other", () => {
    const june: Kit = { id: "kit-j", maker: "Nordkit", period: "2026-06", lines: copied };
    const book = { format: "understudy-workbook" as const, version: 1 as const, kits: [april, june] };
    expect(readWorkbook(writeWorkbook(book))).toMatchObject({ ok: true });
    expect(possiblePrecedents(book, june, copied[0] ?? line("x", "x")).length).toBeGreaterThan(0);
  });
});

describe("lines of earlier kits", () => {
  const june: Kit = { id: "kit-j", maker: "Nordkit", period: "2026-06", lines: [] };
  const book = { kits: [april, may, other, june] };
  const names = (typed: string) =>
    suggestionsFor(book, june, typed).map(({ name, kit }) => `${name}: ${kit}`);

  it("are suggested once each, the same maker's and the newest kit's first", () => {
    expect(names("mo")).toEqual([
      expect.stringMatching(/^Gouache, moss: Nordkit/),
      expect.stringMatching(/^Gouache, mould: Sydkit/),
    ]);
    expect(names("gou mi")).toEqual([expect.stringMatching(/^Gouache, mist/)]);
  });

  it("wait for two letters, and never come from the kit itself", () => {
    expect(names("m")).toEqual([]);
    expect(names("2 m")).toEqual([]);
    expect(suggestionsFor({ kits: [june, { ...april, id: june.id }] }, june, "moss")).toEqual([]);
  });

  it("are asked for with a count in front", () => {
    expect(countedIn("2 moss")).toEqual({ qty: 2, words: "moss" });
    expect(countedIn("3x moss")).toEqual({ qty: 3, words: "moss" });
    expect(countedIn("moss")).toEqual({ qty: 1, words: "moss" });
    expect(names("2 moss")).toHaveLength(1);
  });

  it("are taken as they are, with nothing left to be understood", () => {
    const [first] = suggestionsFor(book, june, "2 moss");
    if (!first) throw new Error("nothing suggested");
    const view = takenView({ text: "2 Gouache, moss", qty: 2, supply: first.supply, kit: first.kit });
    expect(view).toMatchObject({ qty: 2, supply: first.supply, pieces: [], kept: null, price: null });
    expect(view.stretches.map(({ text }) => text).join("")).toBe("2 Gouache, moss");
  });
});
