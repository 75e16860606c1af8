import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { coverage, type KitMatch, matchKit } from "../../src/engine/match/index.ts";
import { minorDigits } from "../../src/engine/money/index.ts";
import { families, type StashItem } from "../../src/engine/supply/index.ts";
import {
  noticesOf,
  type Remake,
  readWorkbook,
  type Workbook,
  WorkbookSchema,
} from "../../src/engine/workbook/index.ts";
import { type Kit, type KitWorth, worthOf } from "../../src/engine/worth/index.ts";

// The sample is a scenario of our own, so what it must show comes from design, not from outside: every rule of the
// game, every kind of price and every nearness has to occur in it, or a first look at the app would miss them.
const text = readFileSync(new URL("../../fixtures/sample.understudy.json", import.meta.url), "utf8");
const book: Workbook = WorkbookSchema.parse(JSON.parse(text));
const stash: readonly StashItem[] = book.stash ?? [];
const kits: readonly Kit[] = book.kits ?? [];
const remakes: readonly Remake[] = book.remakes ?? [];
const lines = kits.flatMap((kit) => kit.lines ?? []);
const evidence = lines.flatMap((line) => line.evidence ?? []);
const tiers = kits.flatMap((kit) => kit.tiers ?? []);

const counted = <T>(items: readonly T[], test: (item: T) => unknown): number => items.filter(test).length;
const distinct = <T>(items: readonly T[]): number => new Set(items).size;

describe("the sample as a file", () => {
  it("is a workbook: nothing missing, no id twice, none that leads nowhere, nothing odd", () => {
    const reading = readWorkbook(text);
    expect(reading.ok ? [] : reading.faults).toEqual([]);
    expect(noticesOf(book, "2026-05-07")).toEqual([]);
  });

  it("is small enough to ship", () => {
    expect(text.length).toBeLessThan(250_000);
  });

  it("keeps one thing a line, so that changes to it can be read", () => {
    const rows = text.split("\n");
    for (const item of stash)
      expect(counted(rows, (row) => row.startsWith(`    { "id": "${item.id}",`))).toBe(1);
  });
});

describe("the sample's places and prices", () => {
  it("has markets whose money has no, two and three decimals (ISO 4217)", () => {
    const digits = (book.markets ?? []).map((market) => minorDigits(market.currency));
    expect(digits).toEqual([2, 2, 0, 3]);
    expect(book.home).toEqual({ market: "se", reportMarkets: ["se", "ie", "jp"] });
  });

  it("marks every import rule as invented", () => {
    const rules = (book.markets ?? []).flatMap((market) => market.import ?? []);
    expect(rules.length).toBeGreaterThanOrEqual(4);
    for (const rule of rules) expect(rule).toMatchObject({ note: expect.stringContaining("Invented") });
  });

  it("has dated rates for all its money", () => {
    expect(book.rates?.length).toBeGreaterThanOrEqual(3);
    for (const table of book.rates ?? []) expect(Object.keys(table.quotes)).toEqual(["SEK", "JPY", "KWD"]);
  });

  it("has shops in every market, with and without free postage, some that post abroad", () => {
    const shops = book.shops ?? [];
    expect(distinct(shops.map((shop) => shop.market))).toBe(4);
    expect(counted(shops, (shop) => shop.freeFrom)).toBeGreaterThan(0);
    expect(counted(shops, (shop) => !shop.freeFrom)).toBeGreaterThan(0);
    expect(counted(shops, (shop) => shop.postageTo)).toBeGreaterThan(0);
  });

  it.each(["list", "shop", "card", "precedent", "guess", "not-sold"])(
    "has evidence of the kind %s",
    (kind) => {
      expect(counted(evidence, (piece) => piece.kind === kind)).toBeGreaterThan(0);
    },
  );

  it("has the turns that evidence takes", () => {
    expect(counted(evidence, (piece) => piece.inStock === false)).toBeGreaterThan(0);
    expect(counted(evidence, (piece) => piece.reducedFrom)).toBeGreaterThan(0);
    expect(counted(evidence, (piece) => piece.plusTax)).toBeGreaterThan(0);
    expect(counted(evidence, (piece) => piece.kind === "guess" && piece.low && piece.high)).toBeGreaterThan(
      0,
    );
    expect(counted(evidence, (piece) => piece.pack?.count)).toBeGreaterThan(0);
    expect(counted(evidence, (piece) => piece.pack?.ml)).toBeGreaterThan(0);
    expect(counted(evidence, (piece) => piece.pack?.sheets && piece.pack.size)).toBeGreaterThan(0);
    const settled = lines.flatMap((line) => line.settled ?? []);
    expect(counted(settled, (one) => one.price)).toBeGreaterThan(0);
    expect(counted(settled, (one) => one.method)).toBeGreaterThan(0);
  });

  it("has prices enough of one kind of paper to see how they grow with size", () => {
    const ofPaper = lines.flatMap(({ supply, evidence }) =>
      supply.family === "paper" && supply.traits?.use === "watercolour" ? (evidence ?? []) : [],
    );
    expect(counted(ofPaper, (piece) => piece.price)).toBeGreaterThanOrEqual(4);
  });
});

describe("the sample's kits", () => {
  it("has ten of two makers over a year, on tiers in two currencies", () => {
    expect(kits.length).toBeGreaterThanOrEqual(8);
    expect(distinct(kits.map((kit) => kit.maker))).toBe(2);
    const periods = kits.map((kit) => kit.period).toSorted();
    expect([periods[0], periods.at(-1)]).toEqual(["2025-06", "2026-04"]);
    expect(distinct(tiers.map((tier) => tier.price.currency))).toBe(2);
    expect(distinct(tiers.map((tier) => tier.id))).toBeGreaterThanOrEqual(4);
    expect(counted(tiers, (tier) => tier.plusTax)).toBeGreaterThan(0);
    expect(counted(tiers, (tier) => tier.markets)).toBeGreaterThan(0);
  });

  it("has what makes logging hard: sources that differ, corrections, several forms, things never sold", () => {
    const contradicted = counted(
      lines,
      ({ claims }) =>
        distinct((claims ?? []).map((claim) => claim.field)) < (claims ?? []).length &&
        distinct((claims ?? []).map((claim) => claim.value)) > 1,
    );
    expect(contradicted).toBeGreaterThanOrEqual(2);
    const sureness = new Set(lines.flatMap((line) => (line.claims ?? []).map((claim) => claim.sure)));
    expect([...sureness].toSorted()).toEqual(["believed", "seen", "told", "unreadable"]);
    expect(counted(kits, (kit) => kit.errata?.length)).toBeGreaterThanOrEqual(2);
    expect(counted(lines, (line) => line.variants?.length)).toBeGreaterThan(0);
    expect(counted(lines, (line) => line.exclusive)).toBeGreaterThan(0);
    expect(book.requests?.length).toBeGreaterThan(0);
    expect(book.parcels?.length).toBeGreaterThan(0);
  });
});

describe("the sample's stash", () => {
  it("has over a hundred and twenty things of every family, in every state", () => {
    expect(stash.length).toBeGreaterThanOrEqual(120);
    expect(new Set(stash.map((item) => item.supply.family))).toEqual(new Set(families));
    expect(new Set(stash.map((item) => item.state ?? "ok"))).toEqual(
      new Set(["ok", "low", "empty", "dried"]),
    );
    expect(counted(stash, (item) => item.place && item.acquired)).toBe(stash.length);
  });

  it("has colours typed and measured, and pads with sheets left", () => {
    expect(counted(stash, ({ supply }) => supply.colour?.hex)).toBeGreaterThanOrEqual(60);
    expect(counted(stash, ({ supply }) => supply.colour?.lab)).toBeGreaterThanOrEqual(3);
    expect(counted(stash, (item) => (item.sheetsLeft ?? 0) > 0)).toBeGreaterThanOrEqual(8);
  });

  it("has twins by hand, and kinships of one product, of whole lines, of colour and of refills", () => {
    const kinships = book.kinships ?? [];
    expect(counted(stash, (item) => item.twinOf?.length)).toBeGreaterThan(0);
    expect(
      counted(kinships, (one) => one.kind === "twin" && one.by === "code" && !one.a?.code),
    ).toBeGreaterThan(0);
    expect(counted(kinships, (one) => one.kind === "twin" && one.a?.code)).toBeGreaterThan(0);
    expect(counted(kinships, (one) => one.kind === "same-colour")).toBeGreaterThan(0);
    expect(counted(kinships, (one) => one.kind === "refill-fits")).toBeGreaterThan(0);
  });
});

describe("the sample's remakes", () => {
  it("has one of a kit received before, and one under way", () => {
    const received = new Set(kits.filter((kit) => kit.received).map((kit) => kit.id));
    expect(counted(remakes, (remake) => received.has(remake.kit))).toBeGreaterThan(0);
    expect(counted(remakes, (remake) => !remake.finished)).toBeGreaterThan(0);
  });

  it("has one that is done: every line with its verdict, a log, an episode and what was published", () => {
    const done = remakes.filter((remake) => remake.finished);
    expect(done).toHaveLength(1);
    const kit = kits.find(({ id }) => id === done[0]?.kit);
    expect(done[0]?.verdicts?.map((verdict) => verdict.line)).toEqual(kit?.lines?.map((line) => line.id));
    expect(done[0]?.log?.length).toBeGreaterThan(3);
    expect(done[0]?.episode?.disclosure).toBe("own");
    expect(done[0]?.published?.[0]?.text).toContain("Slow thaw");
    expect(done[0]?.picks?.some((pick) => pick.uses?.length === 2)).toBe(true);
  });
});

describe("the sample, matched", () => {
  const common = { stash, kinships: book.kinships, weights: book.weights };
  let matches: readonly KitMatch[] = [];
  beforeAll(() => {
    const started = remakes.flatMap((remake) => {
      const kit = kits.find(({ id }) => id === remake.kit);
      return kit ? [matchKit({ ...common, kit, remake })] : [];
    });
    matches = [...kits.map((kit) => matchKit({ ...common, kit })), ...started];
  });

  it("shows every nearness, and gaps", () => {
    const verdicts = matches.flatMap((match) => match.lines.map((line) => line.pick?.verdict ?? "gap"));
    expect(new Set(verdicts)).toEqual(
      new Set(["same", "twin", "same-colour", "near", "fair", "stretch", "gap"]),
    );
  });

  it("shows something left out for each reason, and a last resort", () => {
    const reasons = matches.flatMap((match) =>
      match.lines.flatMap((line) =>
        line.candidates.flatMap(({ leftOut }) => (leftOut ? [leftOut.replace(/:.*/, "")] : [])),
      ),
    );
    expect(new Set(reasons)).toEqual(
      new Set(["received-before", "acquired-after", "empty", "dried", "in-use"]),
    );
    expect(matches.some((match) => match.lines.some((line) => line.pick?.lastResort))).toBe(true);
  });

  it("cuts a larger sheet down, and leaves the flat brush of the kit under way open", () => {
    const underWay = matches.at(-1);
    expect(underWay?.kit).toBe("sp-2026-04");
    expect(underWay?.lines.at(-1)?.pick?.adaptation?.pieces).toBe(1);
    expect(underWay?.lines.filter((line) => line.pick === null).map((line) => line.line)).toEqual(["l7"]);
  });

  it("ranks every kit by how well the stash makes it up, from nearly whole to patchy", () => {
    const ranked = coverage({ ...common, kits });
    expect(ranked).toHaveLength(kits.length);
    expect(ranked[0]?.meanLikeness).toBeGreaterThan(0.9);
    expect(ranked.at(-1)?.meanLikeness).toBeLessThan(0.8);
  });
});

describe("the sample, valued", () => {
  const worths: KitWorth[] = [];
  beforeAll(() => {
    for (const kit of kits) {
      const worth = worthOf(book, kit, ["se", "ie", "jp", "kw"]);
      if (!worth.ok) throw new Error(`${kit.id}: ${worth.fault.problem}`); // a kit that cannot be valued fails here
      worths.push(worth.value);
    }
  });
  const rows = () => worths.flatMap((worth) => worth.markets.flatMap((market) => market.tiers));
  const methods = (field: "listMethod" | "streetMethod") =>
    new Set(
      worths.flatMap((worth) => worth.markets.flatMap((market) => market.lines.map((line) => line[field]))),
    );

  it("pays, does not, and hangs on a line", () => {
    expect(new Set(rows().map((row) => row.listVerdict))).toEqual(new Set(["ahead", "behind", "hangs"]));
    expect(new Set(rows().map((row) => row.streetVerdict))).toEqual(new Set(["ahead", "behind", "hangs"]));
  });

  it("hangs on a line of wide range, and on one without a price", () => {
    const [april] = worths.filter((worth) => worth.kit === "sp-2026-04");
    const japan = april?.markets.find((market) => market.market === "jp");
    const hangsOn = japan?.tiers.flatMap((row) =>
      [row.listHangsOn, row.streetHangsOn].filter((line) => line),
    );
    expect(hangsOn?.length).toBeGreaterThan(0);
    // The guessed brush or the block scaled from a larger one, whichever is the less sure.
    for (const line of hangsOn ?? []) expect(["l7", "l8"]).toContain(line);
    expect(worths.some((worth) => worth.markets.some((market) => market.unpriced.length > 0))).toBe(true);
  });

  it("finds prices in every way there is", () => {
    const list = ["list", "converted", "card", "precedents", "scaled", "guess", "settled"];
    for (const method of list) expect(methods("listMethod")).toContain(method);
    for (const method of ["shop", "converted", "list"]) expect(methods("streetMethod")).toContain(method);
  });

  it("is charged at the border on one way and not on another, and marks old rates once", () => {
    expect(rows().some((row) => Number(row.tax.amount) > 0 && Number(row.handling.amount) > 0)).toBe(true);
    expect(rows().some((row) => Number(row.duty.amount) > 0)).toBe(true);
    expect(rows().some((row) => Number(row.tax.amount) === 0)).toBe(true);
    expect(worths.filter((worth) => worth.staleRates).map((worth) => worth.kit)).toEqual(["sp-2025-11"]);
  });
});
