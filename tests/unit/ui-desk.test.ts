import { describe, expect, it } from "vitest";
import { coverage } from "../../src/engine/match/index.ts";
import type { Remake, Workbook } from "../../src/engine/workbook/index.ts";
import { emptyWorkbook } from "../../src/engine/workbook/index.ts";
import { keptView } from "../../src/ui/desk/view/kept.ts";
import { madeUpView } from "../../src/ui/desk/view/made-up.ts";
import { nextView, stepOf, underWay } from "../../src/ui/desk/view/next.ts";
import { pricesView } from "../../src/ui/desk/view/prices.ts";
import { startView } from "../../src/ui/desk/view/start.ts";
import { formatter } from "../../src/ui/words/index.ts";
import { sampleBook } from "./sample.ts";

const book = sampleBook();
const british = formatter("en-GB");
const remake = (more: Partial<Remake>): Remake => ({
  id: "r",
  kit: "sp-2026-04",
  started: "2026-05-01",
  ...more,
});

describe("how far a remake is", () => {
  it.each<readonly [string, Partial<Remake>, string | null]>([
    ["just begun", {}, "stand-ins"],
    ["a note in the log", { log: [{ text: "taped the block" }] }, "bench"],
    ["something chosen", { picks: [{ line: "l1", uses: [] }] }, "bench"],
    ["something fetched", { fetched: ["st-001"] }, "bench"],
    ["finished", { finished: "2026-05-03" }, "verdict"],
    ["judged", { finished: "2026-05-03", verdict: "A kind box." }, "write-up"],
    [
      "published before it is finished",
      { log: [{ text: "a" }], published: [{ at: "2026-05-04", figures: null }] },
      null,
    ],
    ["published", { finished: "2026-05-03", published: [{ at: "2026-05-04", figures: null }] }, null],
  ])("%s", (_, more, step) => expect(stepOf(remake(more))).toBe(step));
});

describe("what is next", () => {
  it("is the remake begun last of those not finished", () => {
    const open = underWay(book).map(({ id }) => id);
    expect(open).toEqual(["rm-low-light", "rm-boathouse"]);
  });

  it("shows each line of the kit with what plays it", () => {
    const next = nextView(book, british);
    const lines = book.kits?.find(({ id }) => id === "sp-2026-04")?.lines ?? [];
    expect(next?.title).toBe("Next: the stand-ins");
    expect(next?.stepText).toBe("remake begun 2 May 2026, step 1 of 4");
    expect(next?.pairs.map(({ key }) => key)).toEqual(lines.map(({ id }) => id));
    expect(next?.pairs.filter(({ standIn }) => !standIn).map(({ figure, name }) => [figure, name])).toEqual([
      ["", "nothing close"],
    ]);
    expect(next?.others.map(({ id, step }) => [id, step])).toEqual([["rm-boathouse", "bench"]]);
  });

  it("counts what is left to fetch, at the bench", () => {
    const at = (fetched: readonly string[]): Workbook => ({
      ...book,
      remakes: (book.remakes ?? []).map((one) =>
        one.id === "rm-low-light" ? { ...one, log: [{ text: "begun" }], fetched } : one,
      ),
    });
    const all = nextView(at([]), british);
    expect(all?.fetch).toMatch(/^Fetch all /);
    const [first] = all?.pairs.flatMap(({ standIn }) => standIn?.id ?? []) ?? [];
    const some = nextView(at(first ? [first] : []), british);
    expect(some?.fetch).toMatch(/^Fetch the other /);
    expect(some?.leadMore).toMatch(/1 of \d+ is fetched\.$/);
  });

  it("leaves out a remake whose kit is gone", () => {
    const without = { ...book, kits: (book.kits ?? []).filter(({ id }) => id !== "sp-2026-04") };
    expect(nextView(without, british)?.id).toBe("rm-boathouse");
    expect(nextView(emptyWorkbook(), british)).toBeNull();
  });
});

describe("where to begin when no remake is under way", () => {
  const start = (some: Workbook) => startView(some, madeUpView(some, british)).to;
  it("needs a kit, then a stash, then a remake", () => {
    expect(start({ ...book, kits: [], remakes: [] })).toEqual({ name: "kits" });
    expect(start({ ...book, stash: [], remakes: [] })).toEqual({ name: "stash" });
    expect(start({ ...book, remakes: [] })).toEqual({ name: "remakes" });
  });
  it("names the kit that the stash makes up best", () => {
    const some = { ...book, remakes: [] };
    const [best] = coverage({ kits: book.kits ?? [], stash: book.stash ?? [], kinships: book.kinships });
    const title = book.kits?.find(({ id }) => id === best?.kit)?.title ?? "";
    expect(startView(some, madeUpView(some, british)).lead).toContain(title);
  });
});

describe("kits that could be made up", () => {
  const view = madeUpView(book, british);
  it("are those without a remake, best first", () => {
    const remade = new Set((book.remakes ?? []).map(({ kit }) => kit));
    expect(view.rows.every(({ id }) => !remade.has(id))).toBe(true);
    expect(view.hidden).toBe(remade.size);
    const figures = view.rows.map(({ figure }) => Number(figure));
    expect(figures).toEqual(figures.toSorted((a, b) => b - a));
  });
  it("say who asked for them", () => {
    const harbour = view.rows.find(({ id }) => id === "hd-2026-03");
    expect(harbour?.facts).toEqual(["Hoshinagi Drawer, March 2026", "asked for by Haruko"]);
  });
  it("name their weakest line with its figure", () => {
    for (const row of view.rows) {
      expect(row.weakest).not.toBe("");
      expect(Number(row.weakestFigure)).toBeLessThanOrEqual(Number(row.figure));
    }
  });
});

describe("prices to look at", () => {
  it("begin with the kits under way, and name the flat brush as a guess", () => {
    const [first] = pricesView(book, "2026-05-07", british).rows;
    expect(first).toEqual({ key: "sp-2026-04/l7", kit: "sp-2026-04", name: "Flat brush", fact: "a guess" });
  });

  it("hold old rates, and no others", () => {
    // The newest rates are of 30 April 2026; seven days are the engine's own limit.
    const rates = (valuedOn: string, today = "2026-12-01") =>
      pricesView(
        { ...book, kits: [{ id: "k", maker: "M", period: "2026-04", valuedOn }] },
        today,
        british,
      ).rows.find(({ key }) => key === "rates");
    expect(rates("2026-05-07")).toBeUndefined();
    expect(rates("2026-05-08")).toMatchObject({
      name: "Rates of 30 Apr 2026",
      fact: "8 days before the prices of 8 May 2026",
    });
    expect(rates("2026-05-08", "2026-05-07")).toBeUndefined(); // a day to come has no rates yet
  });

  it("say where a price is missing", () => {
    const kit = { id: "k", maker: "M", period: "2026-01", valuedOn: "2026-02-01" };
    const bare: Workbook = {
      ...emptyWorkbook(),
      home: { market: "se" },
      markets: [{ id: "se", name: "Sweden", currency: "SEK" }],
      kits: [{ ...kit, lines: [{ id: "l1", supply: { family: "other", name: "Wax" } }] }],
    };
    expect(pricesView(bare, "2026-05-07", british).rows).toEqual([
      { key: "k/l1", kit: "k", name: "Wax", fact: "no price for Sweden" },
    ]);
  });

  it("say when a kit has no day that its prices are for", () => {
    const kits = (book.kits ?? []).slice(0, 1).map((kit) => ({ ...kit, valuedOn: null }));
    const [row] = pricesView({ ...book, kits, remakes: [] }, "2026-05-07", british).rows;
    expect(row?.fact).toBe("as of which day is not said");
  });
});

describe("kept safe", () => {
  const here = { lasting: true, today: "2026-05-07" };
  it("says so when no copy was ever saved", () => {
    const view = keptView(book, null, here, british);
    expect(view.lead).toBe("No copy has been saved from this browser yet.");
    expect(view.more).toBe("145 things in the stash, 10 kits.");
  });
  it("says when the last copy was saved", () => {
    expect(keptView(book, { at: "2026-05-01T12:00:00.000Z" }, here, british).lead).toBe(
      "Last copy saved on 1 May 2026.",
    );
    expect(keptView(book, { at: "2026-05-07T12:00:00.000Z" }, here, british).lead).toMatch(
      /today at \d\d:\d\d/,
    );
  });
  it("warns where nothing outlasts the tab", () => {
    expect(keptView(book, null, { ...here, lasting: false }, british).lead).toMatch(
      /before you close the tab/,
    );
  });
});
