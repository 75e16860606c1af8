import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { coverage } from "../../src/engine/match/index.ts";
import { type Workbook, WorkbookSchema } from "../../src/engine/workbook/index.ts";
import { KitSchema } from "../../src/engine/worth/index.ts";
import { kitName, kitsView } from "../../src/ui/kits/view/kits-list.ts";
import { kitBefore, likelyDay, makersOf, newKit } from "../../src/ui/kits/view/new-kit.ts";
import { formatter } from "../../src/ui/words/format.ts";

// No outside source: order, words and roundings of this list are the project's own. Names are invented.
const british = formatter("en-GB");
const sample: Workbook = WorkbookSchema.parse(
  JSON.parse(readFileSync("fixtures/sample.understudy.json", "utf8")),
);
const kits = sample.kits ?? [];

describe("the list of kits", () => {
  const view = kitsView(sample, british);

  it("has the newest month first, and every kit once", () => {
    const periods = view.rows.map(({ id }) => kits.find((kit) => kit.id === id)?.period ?? "");
    expect(periods).toEqual(
      kits
        .map(({ period }) => period)
        .toSorted()
        .toReversed(),
    );
  });

  it("gives each kit the engine's figure, out of 100", () => {
    const covered = coverage({ ...sample, kits, stash: sample.stash ?? [] });
    for (const { kit, meanLikeness, gaps } of covered) {
      const row = view.rows.find(({ id }) => id === kit);
      expect(row?.figure).toBe(Math.round(meanLikeness * 100));
      expect(row?.gaps).toBe(["no gap", "one gap", "two gaps"][gaps]);
    }
  });

  it("names the best one that nobody has begun", () => {
    const begun = new Set((sample.remakes ?? []).map(({ kit }) => kit));
    const best = coverage({ ...sample, kits, stash: sample.stash ?? [] }).find(({ kit }) => !begun.has(kit));
    const name = kits.find(({ id }) => id === best?.kit)?.title;
    expect(view.lead).toContain(name ?? "no kit");
    expect(view.leadMore).toBe("Ten kits logged, one remade.");
  });

  it("tells a kit taken up from one remade, and asks for the contents of one without", () => {
    const [kit, other] = kits;
    if (!kit || !other) throw new Error("the sample has kits");
    const remakes = [{ id: "rm", kit: kit.id, started: "2026-05-02" }];
    const led = (some: readonly (typeof kit)[]) =>
      kitsView({ ...sample, kits: [...some], remakes }, british).lead;
    expect(led([kit])).toBe("Every kit logged here has been taken up.");
    expect(led([kit, { ...other, lines: [] }])).toBe(
      "Put in what a kit held, and it says how well you could make it up.",
    );
  });

  it("says what was remade, what is under way, and what was met before", () => {
    const facts = (id: string) => view.rows.find((row) => row.id === id)?.facts;
    expect(facts("sp-2026-02")).toContain("remade 14 Mar 2026");
    expect(facts("sp-2026-04")).toContain("remake under way");
    expect(facts("sp-2025-11")).toContain("met before");
  });

  it("judges nothing while there is no stash, and no kit without lines", () => {
    const bare = kitsView({ ...sample, stash: [] }, british);
    expect(bare.rows.every(({ figure, gaps }) => figure === null && gaps === null)).toBe(true);
    const empty = { id: "k", maker: "Skarvholm Parcel", period: "2026-05" };
    expect(kitsView({ ...sample, kits: [empty] }, british).rows[0]).toMatchObject({
      name: "Skarvholm Parcel, May 2026",
      figure: null,
      facts: ["Nothing in it yet"],
    });
  });
});

it("calls a kit without a title by who sent it and when", () => {
  expect(kitName({ id: "k", maker: "Hoshinagi Drawer", period: "2026-01" }, british)).toBe(
    "Hoshinagi Drawer, January 2026",
  );
});

describe("a new kit", () => {
  const draft = { maker: "Skarvholm Parcel", period: "2026-05", title: null, valuedOn: "2026-06-02" };

  it("offers the makers there are, the newest kit's first", () => {
    expect(makersOf(kits)).toEqual(["Skarvholm Parcel", "Hoshinagi Drawer"]);
  });

  it("takes tiers and origin over from the maker's newest kit up to its month, never a later one", () => {
    expect(kitBefore(kits, draft)?.id).toBe("sp-2026-04");
    expect(kitBefore(kits, { ...draft, period: "2025-10" })?.id).toBe("sp-2025-09");
    expect(kitBefore(kits, { ...draft, maker: "Nobody yet" })).toBeNull();
  });

  // No outside source: 62 days is the project's own; the last days of months are the Gregorian calendar's.
  it.each([
    ["2026-05", "2026-06-02", "2026-06-02"],
    ["2026-06", "2026-06-02", "2026-06-02"], // its month is not over yet
    ["2026-09", "2026-06-02", "2026-06-02"], // nor begun
    ["2026-04", "2026-07-01", "2026-07-01"], // 62 days after 30 April
    ["2026-04", "2026-07-02", "2026-04-30"], // 63 days
    ["2024-02", "2026-06-02", "2024-02-29"], // a leap year's
    ["2025-12", "2026-06-02", "2025-12-31"],
  ])("of %s, logged %s, is priced as of %s unless said otherwise", (period, today, day) => {
    expect(likelyDay(period, today)).toBe(day);
  });

  it("is what the workbook takes, valued as of the day given", () => {
    const kit = newKit("k1", draft, "2026-06-02", kitBefore(kits, draft));
    expect(KitSchema.safeParse(kit).success).toBe(true);
    expect(kit).toMatchObject({ loggedOn: "2026-06-02", valuedOn: "2026-06-02", shipsFrom: "ie" });
    expect(kit.tiers).toEqual(kits.find(({ id }) => id === "sp-2026-04")?.tiers);
    expect(Object.keys(newKit("k1", draft, "2026-06-02", null))).not.toContain("tiers");
    const open = newKit("k1", { ...draft, valuedOn: null }, "2026-06-02", null);
    expect(KitSchema.safeParse(open).success).toBe(true);
    expect(Object.keys(open)).not.toContain("valuedOn");
  });
});
