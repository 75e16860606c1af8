import { describe, expect, it } from "vitest";
import {
  type KitMatch,
  type MatchInput,
  type MatchRemake,
  matchKit,
  type Pick,
} from "../../../src/engine/match/index.ts";
import type { StashItem, Supply } from "../../../src/engine/supply/index.ts";

const hb = (code: string | null, grade = "HB"): Supply => ({
  family: "graphite",
  name: `Pencil ${code} ${grade}`,
  maker: "Nordlys",
  line: "Skiss",
  code,
  traits: { grade: grade as "HB" },
});
const own = (id: string, supply: Supply, more: Partial<StashItem> = {}): StashItem => ({
  id,
  supply,
  ...more,
});
const lines = (...supplies: Supply[]) => supplies.map((supply, at) => ({ id: `l${at + 1}`, supply }));

const match = (
  stash: StashItem[],
  more: Partial<Omit<MatchInput, "kit">> & { kit?: Partial<MatchInput["kit"]> } = {},
): KitMatch =>
  matchKit({ ...more, stash, kit: { id: "k", loggedOn: "2026-04-12", lines: lines(hb("1")), ...more.kit } });

const picks = (found: KitMatch) => found.lines.map(({ pick }) => pick?.stash ?? null);
const reason = (found: KitMatch, stash: string, line = 0) =>
  found.lines[line]?.candidates.find((one) => one.stash === stash)?.leftOut;

describe("what is left out", () => {
  it.each<{ why: string; item: Partial<StashItem>; leftOut: string | null }>([
    { why: "bought after the kit was logged", item: { acquired: "2026-04-13" }, leftOut: "acquired-after" },
    { why: "bought on the very day", item: { acquired: "2026-04-12" }, leftOut: null },
    {
      why: "bought since, but not for this",
      item: { acquired: "2026-05-01", boughtForThis: false },
      leftOut: null,
    },
    {
      why: "bought since, nobody says what for",
      item: { acquired: "2026-05-01", boughtForThis: null },
      leftOut: "acquired-after",
    },
    { why: "empty", item: { state: "empty" }, leftOut: "empty" },
    { why: "none owned", item: { owned: 0 }, leftOut: "empty" },
    { why: "dried, and bought since", item: { state: "dried", acquired: "2026-05-01" }, leftOut: "dried" },
    { why: "nearly empty", item: { state: "low" }, leftOut: null },
  ])("$why: $leftOut", ({ item, leftOut }) => {
    const found = match([own("a", hb("1"), item)]);
    expect(reason(found, "a")).toBe(leftOut);
    expect(picks(found)).toEqual([leftOut === null ? "a" : null]);
  });

  it("counts from the remake's start as well, whichever was first", () => {
    const stash = [own("a", hb("1"), { acquired: "2026-04-10" })];
    expect(reason(match(stash, { remake: { started: "2026-04-09" } }), "a")).toBe("acquired-after");
    expect(reason(match(stash, { remake: { started: "2026-04-10" } }), "a")).toBeNull();
    const late = [own("a", hb("1"), { acquired: "2026-04-20" })];
    expect(reason(match(late, { remake: { started: "2026-05-01" } }), "a")).toBe("acquired-after");
    expect(reason(match(late, { kit: { loggedOn: null } }), "a")).toBeNull();
  });

  it("names the line that uses an item up, and none while there is one to spare", () => {
    const kit = { lines: lines(hb("1"), hb("9", "2B")) };
    const used = match([own("a", hb("1")), own("b", hb("2", "2B"))], { kit });
    expect(picks(used)).toEqual(["a", "b"]);
    expect(reason(used, "a", 1)).toBe("in-use:l1");
    expect(reason(used, "a", 0)).toBeNull();
    expect(reason(match([own("a", hb("1"), { owned: 3 })], { kit }), "a", 1)).toBeNull();
  });
});

describe("how many lines an item serves", () => {
  const kit = { lines: lines(hb("1"), hb("1"), hb("1")) };
  it("is as many as are owned", () => {
    expect(picks(match([own("a", hb("1"), { owned: 2 })], { kit }))).toEqual(["a", "a", null]);
  });
  it("is the sheets left of a pad, where they are counted", () => {
    const pad: Supply = { family: "paper", name: "Pad", traits: { use: "layout" } };
    const sheets = { lines: lines(pad, pad, pad) };
    expect(picks(match([own("p", pad, { owned: 1, sheetsLeft: 2 })], { kit: sheets }))).toEqual([
      "p",
      "p",
      null,
    ]);
    expect(picks(match([own("p", pad, { sheetsLeft: 0 })], { kit: sheets }))).toEqual([null, null, null]);
    expect(picks(match([own("p", pad)], { kit: sheets }))).toEqual(["p", null, null]);
  });
});

describe("a kit once received", () => {
  const received = { received: true };
  const near = own("near", hb("5", "B"));

  it("leaves out the very product and its twins", () => {
    const found = match([own("a", hb("1"), { twinOf: ["t"] }), own("t", hb("7")), near], { kit: received });
    expect(picks(found)).toEqual(["near"]);
    expect([reason(found, "a"), reason(found, "t")]).toEqual(["received-before", "received-before"]);
  });

  it("lets twins back in by the switch, but not the product", () => {
    const stash = [own("a", hb("1"), { twinOf: ["t"] }), own("t", hb("7")), near];
    const found = match(stash, { kit: received, remake: { started: "2026-05-02", rules: { twins: true } } });
    expect(found.lines[0]?.pick).toMatchObject({ stash: "t", verdict: "twin", likeness: 1 });
    expect(reason(found, "a")).toBe("received-before");
  });

  it("falls back on the product itself where there would be a gap, and says so", () => {
    const found = match([own("a", hb("1"), { twinOf: ["t"] }), own("t", hb("7"))], { kit: received });
    expect(found.lines[0]?.pick).toEqual(
      expect.objectContaining({ stash: "a", lastResort: true, by: "engine" }),
    );
    expect(reason(found, "a")).toBe("received-before");
    expect(match([own("a", hb("1"))]).lines[0]?.pick).not.toHaveProperty("lastResort");
  });

  it("does not fall back on what was bought since, is used up or serves another line", () => {
    expect(picks(match([own("a", hb("1"), { acquired: "2026-05-01" })], { kit: received }))).toEqual([null]);
    expect(picks(match([own("a", hb("1"), { state: "empty" })], { kit: received }))).toEqual([null]);
    const both = { ...received, lines: lines(hb("1"), hb("1")) };
    expect(picks(match([own("a", hb("1"))], { kit: both }))).toEqual(["a", null]);
  });
});

describe("a person's picks", () => {
  const remake = (...mine: Pick[]): MatchRemake => ({ started: "2026-05-02", picks: mine });
  const mine = (line: string, ...uses: NonNullable<Pick["uses"]>): Pick => ({ line, uses, by: "person" });
  const [best, worse] = [own("best", hb("1")), own("worse", hb("5", "2B"))];

  it("stand, and the rest is solved around them", () => {
    const kit = { lines: lines(hb("1"), hb("1")) };
    const found = match([best, worse], { kit, remake: remake(mine("l2", { stash: "best" })) });
    expect(picks(found)).toEqual(["worse", "best"]);
    expect(found.lines.map(({ pick }) => pick?.by)).toEqual(["engine", "person"]);
    expect(found.totalLikeness).toBeCloseTo(1 + (found.lines[0]?.pick?.likeness ?? 0), 10);
  });

  it("may take what is left out, but nothing empty or dried: then the line is solved again", () => {
    const late = own("late", hb("2"), { acquired: "2027-01-01" });
    const found = match([best, late], { remake: remake(mine("l1", { stash: "late" })) });
    expect([picks(found), reason(found, "late")]).toEqual([["late"], "acquired-after"]);
    const dry = own("dry", hb("2"), { state: "dried" });
    expect(picks(match([best, dry], { remake: remake(mine("l1", { stash: "dry" })) }))).toEqual(["best"]);
  });

  it("may leave a line open on purpose, also in a kit once received", () => {
    expect(picks(match([best], { remake: remake(mine("l1")) }))).toEqual([null]);
    expect(picks(match([best], { kit: { received: true }, remake: remake(mine("l1")) }))).toEqual([null]);
  });

  it("are judged by the larger share of two, and use up both", () => {
    const kit = { lines: lines(hb("1"), hb("1")) };
    const mix = mine("l1", { stash: "best", share: "0.4" }, { stash: "worse", share: "0.6" });
    const found = match([best, worse], { kit, remake: remake(mix) });
    expect(picks(found)).toEqual(["worse", null]);
    expect([reason(found, "best", 1), reason(found, "best", 0)]).toEqual(["in-use:l1", null]);
  });

  it("may be from another role altogether: shown, as far as it is from the kit", () => {
    const brush = own("brush", { family: "brush", name: "Round" });
    const found = match([best, brush], { remake: remake(mine("l1", { stash: "brush" })) });
    expect(found.lines[0]?.pick).toMatchObject({ stash: "brush", likeness: 0, verdict: "gap", by: "person" });
    expect(match([best, brush]).lines[0]?.candidates.map(({ stash }) => stash)).toEqual(["best"]);
  });

  it("are not what the engine once picked", () => {
    const stored = { line: "l1", uses: [{ stash: "worse" }], by: "engine" as const };
    expect(picks(match([best, worse], { remake: remake(stored) }))).toEqual(["best"]);
  });
});

describe("the order of candidates", () => {
  const stash = [
    own("b", hb(null)),
    own("a", hb("1")),
    own("B", hb("1")),
    own("t", hb("3"), { twinOf: ["a"] }),
    own("z", hb("4")),
  ];
  const kit = { lines: lines(hb("1")) };

  it("is likeness, then same, then twin, then lower id by code unit", () => {
    const found = match(stash, { kit });
    expect(found.lines[0]?.candidates.map(({ stash: id, verdict }) => [id, verdict])).toEqual([
      ["B", "same"],
      ["a", "same"],
      ["t", "twin"],
      ["b", "near"],
      ["z", "near"],
    ]);
    expect(match(stash.toReversed(), { kit })).toEqual(found);
  });

  it("can be cut short without changing the picks", () => {
    const short = match(stash, { kit, limit: 2 });
    expect(short.lines[0]?.candidates).toHaveLength(2);
    expect(picks(short)).toEqual(["B"]);
  });
});

describe("the second choice", () => {
  it("says what it would cost in all, others moving up", () => {
    const kit = { lines: lines(hb("1"), hb("8", "B")) };
    const found = match([own("a", hb("1")), own("b", hb("8", "B"))], { kit });
    // Swapped, each line is one grade off: 1 − 1/21 instead of 1, twice.
    const cost = 2 * (1 - Math.round((1 - 1 / 21) * 10_000) / 10_000);
    expect(found.lines[0]?.secondChoice).toEqual({ stash: "b", cost: expect.closeTo(cost, 10) });
  });
  it("is null where there is nothing else, and for a person's pick", () => {
    expect(match([own("a", hb("1"))]).lines[0]?.secondChoice).toBeNull();
    expect(match([]).lines[0]).toEqual({ line: "l1", pick: null, candidates: [], secondChoice: null });
  });
});

it("ids like __proto__ and constructor are ids like any other", () => {
  const stash = [own("__proto__", hb("1")), own("constructor", hb("2", "B"))];
  const kit = {
    lines: [
      { id: "__proto__", supply: hb("1") },
      { id: "constructor", supply: hb("2", "B") },
    ],
  };
  expect(picks(match(stash, { kit, weights: JSON.parse('{"__proto__":{"grade":1}}') }))).toEqual([
    "__proto__",
    "constructor",
  ]);
});
