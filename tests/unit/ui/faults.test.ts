import { afterAll, describe, expect, it, vi } from "vitest";
import { parseColour } from "../../../src/engine/colour/index.ts";
import { readReferenceRates } from "../../../src/engine/money/index.ts";
import type { Fault } from "../../../src/engine/record/index.ts";
import {
  noticesOf,
  readWorkbook,
  sizeLimitBytes,
  type Workbook,
} from "../../../src/engine/workbook/index.ts";
import { valueKit } from "../../../src/engine/worth/index.ts";
import { faultIn as faultInEnglish } from "../../../src/ui/words/faults.ts";
import { inSwedish } from "../../../src/ui/words/sv/faults.ts";
import { badFiles } from "../../e2e/bad-input/refused-files.ts";
import { sampleBook } from "../sample.ts";
import { smallWorkbook } from "../workbook/small.ts";
import { faultSentences } from "./fault-sentences.ts";

describe("every sentence that the sources can make has its Swedish", () => {
  const sentences = faultSentences(["src/engine", "src/store/journal"]);

  it("finds them", () => {
    const all = sentences.flatMap(({ forms }) => forms);
    expect(sentences.length).toBeGreaterThan(80);
    for (const one of [
      "missing",
      "the id is empty",
      "nested too deep",
      "there are only 7 left",
      "kit is still to come",
    ])
      expect(all).toContain(one);
  });

  it.each([...new Map(sentences.map((one) => [one.forms[0], one] as const)).values()])(
    "$forms.0 ($file)",
    ({ forms }) => {
      const known = forms.map(inSwedish).filter((swedish) => swedish !== null);
      expect(known).not.toEqual([]);
      expect(known.filter(hasEnglish)).toEqual([]);
    },
  );
});

/** Every place of a document, as steps. */
const placesOf = (
  value: unknown,
  above: readonly (string | number)[] = [],
): readonly (readonly (string | number)[])[] =>
  typeof value !== "object" || value === null
    ? [above]
    : [above, ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner, [...above, key]))];

/** The document with the value at a place replaced; undefined takes it out. */
function spoilt(document: unknown, place: readonly (string | number)[], value: unknown): unknown {
  const copy = structuredClone(document);
  const inner = place.slice(0, -1).reduce<unknown>((at, step) => Reflect.get(Object(at), step), copy);
  const last = place.at(-1);
  if (last === undefined) return value;
  if (value === undefined) Reflect.deleteProperty(Object(inner), last);
  else Reflect.set(Object(inner), last, value);
  return copy;
}

const spoilers = [
  undefined,
  null,
  "",
  "x",
  "a/b",
  "-1",
  "2026-02-30",
  0,
  -1,
  1.5,
  7,
  true,
  [],
  [1],
  {},
  { id: "x" },
];

/** The sample with only the first of each list, and of the stash one of each family. */
function thinned(): Workbook {
  const book = sampleBook();
  const families = new Map((book.stash ?? []).map((item) => [item.supply.family, item]));
  const first = <T>(list: readonly T[] | null | undefined) => (list ?? []).slice(0, 1);
  const kits = first(book.kits).map((kit) => ({ ...kit, lines: (kit.lines ?? []).slice(0, 2) }));
  return {
    ...book,
    stash: [...families.values()],
    kits,
    remakes: first(book.remakes),
    shops: first(book.shops),
    parcels: first(book.parcels),
    kinships: first(book.kinships),
    requests: first(book.requests),
    rates: first(book.rates),
    weights: { paint: { colour: 5 } },
  };
}

const faultsOf = (text: string, bytes?: number): readonly Fault[] => {
  const reading = readWorkbook(text, bytes);
  return reading.ok ? [] : reading.faults;
};

/** What is said with no Swedish for it. */
const unsaid = (faults: readonly Fault[]): readonly string[] =>
  faults.flatMap(({ problem, remedy }) => [problem, remedy]).filter((text) => inSwedish(text) === null);

/** Whether English words are left over in a sentence, quotations apart. */
const hasEnglish = (swedish: string): boolean =>
  /\b(the|is|not|write|with|and|of|where|there|give|undefined)\b/.test(swedish.replace(/"[^"]*"/gs, ""));

const leftOver = (faults: readonly Fault[]): readonly string[] =>
  faults
    .flatMap(({ problem, remedy }) => [inSwedish(problem) ?? "", inSwedish(remedy) ?? ""])
    .filter(hasEnglish);

function expectSaid(faults: readonly Fault[]): void {
  expect(unsaid(faults)).toEqual([]);
  expect(leftOver(faults)).toEqual([]);
}

describe("what the engine really says is said in Swedish", () => {
  it.each([
    ["the small workbook", smallWorkbook()],
    ["the sample", thinned()],
  ])("of any one field spoilt in any way in %s", (_, document) => {
    const faults = placesOf(document).flatMap((place) =>
      spoilers.flatMap((value) => faultsOf(JSON.stringify(spoilt(document, place, value)) ?? "")),
    );
    expect(faults.length).toBeGreaterThan(1000);
    expectSaid(faults);
  });

  it.each(badFiles)("of a bad file: $name", ({ bytes }) => {
    const faults = faultsOf(bytes.toString("utf8"));
    expect(faults.length).toBeGreaterThan(0);
    expectSaid(faults);
  });

  it("of a number that JSON can write and a measure cannot be", () => {
    const faults = faultsOf(JSON.stringify(smallWorkbook()).replace('"ml":15', '"ml":1e400'));
    expect(faults.map(({ problem }) => inSwedish(problem))).toEqual(["talet Infinity passar inte där"]);
  });

  // The sentences of two browsers' own parsers, from memory.
  it.each([
    [
      "Expected ',' or '}' after property value in JSON at position 20 (line 3 column 5)",
      "inte JSON (rad 3, tecken 5)",
    ],
    ["JSON.parse: unexpected character at line 1 column 2 of the JSON data", "inte JSON (rad 1, tecken 2)"],
    ["Unexpected end of JSON input", "inte JSON"],
  ])("of what a browser says: %s", (why, said) => expect(inSwedish(`not JSON (${why})`)).toBe(said));

  it("of a file that is too large", () => expectSaid(faultsOf("{}", sizeLimitBytes + 1)));

  it.each([
    "",
    "Day,USD",
    "Date,ABC",
    "Date,USD,USD",
    "Date,USD\nx,1",
    "Date,USD\n2026-03-02,0",
    "Date,USD\n2026-03-02,x",
  ])("of the rate file %j", (text) => {
    const read = readReferenceRates(text);
    const faults = read.ok ? [] : read.faults;
    expect(faults.length).toBeGreaterThan(0);
    expectSaid(faults);
    expect(faults.map(({ place }) => inSwedish(place)).join()).toMatch(/^rad \d+/);
  });

  it("of a colour that is none", () => {
    const read = parseColour('gr"een');
    expectSaid(read.ok ? [] : [read.fault]);
    expect(read.ok).toBe(false);
  });

  it("of rates and days that are missing", () => {
    const book = sampleBook();
    const [kit] = book.kits ?? [];
    if (!kit) throw new Error("the sample has a kit");
    const markets = ["se", "jp", "nowhere"];
    const rates = (book.rates ?? []).map((table, at) => ({
      ...table,
      quotes: at % 2 === 0 ? { SEK: "11" } : { JPY: "160" },
    }));
    const valued = [
      valueKit({ ...book, rates: [] }, kit, markets),
      valueKit({ ...book, rates }, kit, ["se", "jp"]),
      valueKit(book, { ...kit, valuedOn: null }, markets),
    ];
    const faults = valued.flatMap((one) => (one.ok ? [] : one.faults));
    expect(faults.length).toBeGreaterThan(3);
    expectSaid(faults);
  });

  it("of what is odd", () => {
    const odd = {
      ...smallWorkbook(),
      rates: [
        { date: "2026-03-31", base: "EUR", quotes: { SEK: "11.0250" } },
        { date: "2027-04-30", base: "EUR", quotes: { SEK: "110.25", EUR: "2" } },
      ],
      remakes: [
        {
          id: "r",
          kit: "k1",
          started: "2026-05-02",
          picks: [{ line: "l1", uses: [{ share: "0.5" }, { share: "0.4" }] }],
        },
      ],
    };
    const notices = noticesOf(odd as Workbook, "2026-06-01"); // small, but a workbook
    expect(notices.length).toBe(4);
    expect(notices.map(({ notice }) => inSwedish(notice))).toEqual([
      "2027-04-30 har inte varit än",
      "110.25 är långt från 11.025 den 2026-03-31; kontrollera det",
      "EUR är basvaluta och räknas som 1, inte 2",
      "andelarna blir inte 1 tillsammans",
    ]);
  });
});

describe("on the page", () => {
  afterAll(() => vi.unstubAllGlobals());
  const fault = {
    place: "file",
    problem: "nested too deep",
    remedy: "choose a workbook file",
    kind: "refused",
  };

  it("a fault stays as it is in English", () => expect(faultInEnglish(fault)).toEqual(fault));

  it("a fault is in Swedish for a reader of Swedish, with English where a sentence is not known", async () => {
    vi.stubGlobal("navigator", { languages: ["sv"] });
    vi.resetModules();
    const { faultIn, noticeIn } = await import("../../../src/ui/words/faults.ts");
    await vi.dynamicImportSettled(); // its words come after the page
    expect(faultIn(fault)).toEqual({
      place: "filen",
      problem: "för djupt nästlad",
      remedy: "välj en arbetsboksfil",
      kind: "refused",
    });
    expect(noticeIn("a sentence of a later engine")).toBe("a sentence of a later engine");
  });
});
