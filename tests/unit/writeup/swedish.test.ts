import { describe, expect, it } from "vitest";
import { sumMoney } from "../../../src/engine/money/index.ts";
import type { Remake, Workbook } from "../../../src/engine/workbook/index.ts";
import {
  asCsv,
  asHtml,
  asMarkdown,
  asText,
  remindersFor,
  type Writeup,
  writeupOf,
} from "../../../src/engine/writeup/index.ts";
import fc from "../../chance.ts";
import { named, sampleBook } from "../sample.ts";
import { platformFaults, typedParts } from "./platform.ts";

const book = sampleBook();
const remake = named(book.remakes, "rm-slow-thaw");

function written(language: "en" | "sv" = "sv", of: Remake = remake, workbook: Workbook = book): Writeup {
  const result = writeupOf(workbook, of, language);
  if (!result) throw new Error("the sample's kit is missing");
  return result;
}
const wholeOf = (writeup: Writeup): string => asText(writeup, 1e6).text;
const changed = (change: Partial<Remake>): string => wholeOf(written("sv", { ...remake, ...change }));
const whole = wholeOf(written());

// The sample is in English, as its person typed it; what the app says around it was read by eye, once, and is kept.
describe("the sample's text in Swedish, part by part", () => {
  const part = (heading: string): readonly string[] => {
    const from = whole.split("\n").indexOf(heading);
    const rest = whole.split("\n").slice(from + 1);
    return from < 0 ? [] : rest.slice(0, rest.indexOf(""));
  };

  it("opens with the result and how the supplies came", () => {
    expect(whole.split("\n").slice(0, 6)).toEqual([
      "Slow thaw: the kit I never had: 9 av 9 från mina egna hyllor. Allt fanns hemma.",
      "",
      "Kitet: Slow thaw, från Skarvholm Parcel, februari 2026.",
      "Uppgiften: The first dark patch in the ice. / Leave one corner frozen.",
      "Omtag från 7 mars 2026 till 14 mars 2026, inget köpt för det.",
      "Allt som visas var redan mitt; ingen har betalat för det här.",
    ]);
  });
  it("has its headings in order", () => {
    expect(whole.split("\n").filter((line) => /^[^a-zåäö#]{4,}$/.test(line))).toEqual([
      "KAPITEL",
      "INNEHÅLLET OCH ERSÄTTARNA",
      "VID SIDAN AV KITET",
      "VÄRDE I SWEDEN, SEK",
      "VÄRDE I IRELAND, EUR",
      "VÄRDE I JAPAN, JPY",
      "PRISER I SWEDEN, SEK",
      "PRISER I IRELAND, EUR",
      "PRISER I JAPAN, JPY",
      "VAD SIFFRORNA BYGGER PÅ",
      "HUR PRISERNA I SWEDEN HITTADES",
      "HUR PRISERNA I IRELAND HITTADES",
      "HUR PRISERNA I JAPAN HITTADES",
      "MITT OMDÖME",
      "RÄTTELSER",
      "BERÄTTA FÖR MIG",
      "LÄNKAR",
      "VAR FÖRSIKTIG",
    ]);
  });
  it("says what stood in, and beside the kit", () => {
    expect(part("INNEHÅLLET OCH ERSÄTTARNA")[2]).toMatch(
      /^3\. Watercolour, alder \(.*\): Watercolour, rust water med Watercolour, seal brown; 79 av 100, ganska nära; 9,8 ifrån/,
    );
    expect(part("INNEHÅLLET OCH ERSÄTTARNA")[6]).toMatch(/^7\. Liner, black \(0,1 mm, .*vattenfast\): /);
    expect(part("VID SIDAN AV KITET")).toEqual([
      "Grundsak tillagd: Graphite pencil (att rita med)",
      "Bara visad, inte använd i verket: Watercolour, ash. To show what meltwater turns into over grey.",
      "Regel 3 tänjd: Masked the edge with tape, which the kit did not have.",
    ]);
  });
  it("says the worth, and what it rests on", () => {
    expect(part("VÄRDE I SWEDEN, SEK").slice(0, 2)).toEqual([
      "Innehållet tillsammans: listpris 371,99; butikspris 348,31; bara det jag skulle använda 343,27",
      "Month by month: ett kit kostar 324,12; enligt listpris +47,87 lönar sig; enligt butikspris +24,19 lönar sig; enligt det jag skulle använda +19,15",
    ]);
    expect(part("VÄRDE I JAPAN, JPY")[1]).toContain("enligt listpris −701 lönar sig inte");
    expect(part("PRISER I SWEDEN, SEK").slice(-1)).toEqual([
      "Tillsammans: listpris 371,99; butikspris 348,31",
    ]);
    expect(part("VAD SIFFRORNA BYGGER PÅ")).toEqual([
      "Listpriser och butikspriser per 28 feb. 2026; priser ändras.",
      "1 EUR = 10,9870 SEK; 168,70 JPY den 27 feb. 2026 (Invented for this sample)",
    ]);
    expect(part("HUR PRISERNA I SWEDEN HITTADES")[2]).toMatch(
      /^Watercolour, alder: Listpris i Ireland, 4,30 EUR den 10 feb\. 2026, .*\. Inget butikspris: listpriset får gälla\.$/,
    );
  });
  it("says the verdict, the slips and the cautions", () => {
    expect(part("MITT OMDÖME")[1]).toBe(
      "Watercolour, meltwater: jag skulle använda det varje dag, skulle köpa det, det skulle ersätta my mix of two blues. The one I would have kept.",
    );
    expect(part("RÄTTELSER")).toEqual(["Vid 12.30 sa jag oil pastel; jag menade soft pastel"]);
    expect(part("VAR FÖRSIKTIG")).toEqual([
      "Pastell, kol och färgpulver: andas inte in dammet och torka upp det fuktigt; en del pigment är giftiga.",
      "Läs etiketten och tillverkarens säkerhetsdatablad; lokala regler går först.",
      "En färg på en skärm är ungefärlig: gör ett färgprov på det riktiga papperet innan du litar på den.",
    ]);
  });
});

describe("beside the English", () => {
  it("has the same sections, as needed, with as many lines and cells", () => {
    const shape = ({ sections }: Writeup) =>
      sections.map(({ id, keep, verbatim, blocks }) => ({
        id,
        keep,
        verbatim,
        blocks: blocks.map((block) =>
          block.kind === "lines"
            ? block.lines.length
            : [block.head.length, block.numeric, block.rows.map((row) => row.map((cell) => cell !== ""))],
        ),
      }));
    expect(shape(written())).toEqual(shape(written("en")));
  });
  it("says every line otherwise, but for what the person typed whole", () => {
    const english = new Set(wholeOf(written("en")).split("\n"));
    const alike = whole.split("\n").filter((line) => line !== "" && english.has(line));
    const typed = [
      ...(remake.log ?? []).map(({ text }) => text ?? ""),
      ...(remake.questions ?? []),
      ...(remake.episode?.links ?? []).map(({ text }) => text ?? ""),
      remake.verdict ?? "",
      "#",
    ];
    expect(alike.filter((line) => !typed.some((text) => line.includes(text)))).toEqual([]);
  });
  it("has the same figures, with a decimal comma", () => {
    const figures = ({ sections }: Writeup) =>
      sections
        .flatMap(({ blocks }) => blocks)
        .flatMap((block) => (block.kind === "table" && block.numeric.length > 0 ? block.rows : []))
        .flatMap((row) => row.slice(1).flatMap((cell) => cell.match(/[+−]?\d+(?:[.,]\d+)?/g) ?? []));
    const swedish = figures(written());
    expect(swedish.length).toBeGreaterThan(80);
    expect(swedish.filter((figure) => figure.includes("."))).toEqual([]);
    expect(swedish.map((figure) => figure.replace(",", "."))).toEqual(figures(written("en")));
  });
});

describe("what holds in English holds", () => {
  it("totals are the sums of the printed lines, to the öre", () => {
    const rows = whole.slice(whole.indexOf("PRISER I SWEDEN")).split("\n\n")[0]?.split("\n").slice(1) ?? [];
    const figures = (word: string) =>
      rows.map((row) => ({
        amount: (new RegExp(`${word} ([0-9,]+)`).exec(row)?.[1] ?? "none").replace(",", "."),
        currency: "SEK",
      }));
    for (const word of ["listpris", "butikspris"]) {
      const [total, ...lines] = figures(word).toReversed();
      expect(lines.length).toBe(9);
      expect(sumMoney("SEK", lines).amount).toBe(total?.amount);
    }
  });

  it("the opening is at most 100 characters, and a long title gives way to the disclosure", () => {
    for (const disclosure of ["own", "bought", "gifted", "lent", "sponsored", "affiliate"] as const) {
      const opening = changed({ episode: { title: "En mycket lång titel ".repeat(9), disclosure } }).split(
        "\n",
      )[0];
      expect([...(opening ?? "")].length).toBeLessThanOrEqual(100);
      expect(opening).toMatch(/…: 9 av 9 från mina egna hyllor\. \p{Lu}[^…]+\.$/u);
    }
  });

  it("a platform takes the sample's text, and any text a person may type", () => {
    expect(platformFaults(whole, "KAPITEL")).toEqual([]);
    fc.assert(
      fc.property(typedParts, (parts) => {
        expect(platformFaults(changed(parts), "KAPITEL")).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it("a limit in bytes is kept, with å, ä and ö two bytes each, and no line is cut", () => {
    const lines = new Set(whole.split("\n"));
    const sample = written();
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9000 }), (limit) => {
        const fitted = asText(sample, limit);
        expect(fitted.bytes).toBeLessThanOrEqual(limit);
        expect(new TextEncoder().encode(fitted.text).length).toBe(fitted.bytes);
        const own = fitted.text.split("\n").filter((line) => !/för längdens skull/.test(line));
        expect(own.filter((line) => !lines.has(line))).toEqual([]);
        if (fitted.leftOut.length > 0 && limit > 900) expect(fitted.text).toContain(fitted.leftOut[0]);
      }),
      { numRuns: 200 },
    );
    expect(asText(sample, 700).text).toMatch(/\n(Utelämnat|Resten är utelämnat) för längdens skull/);
  });
});

describe("where something is missing", () => {
  const withKit = (change: object): Workbook => ({
    ...book,
    kits: (book.kits ?? []).map((kit) => (kit.id === remake.kit ? { ...kit, ...change } : kit)),
  });
  it("totals and gains are least ones", () => {
    const lines = named(book.kits, remake.kit).lines?.map((line, i) =>
      i === 0 ? { ...line, evidence: [], settled: [] } : line,
    );
    const text = wholeOf(written("sv", remake, withKit({ lines })));
    expect(text).toContain("Utan både listpris och butikspris: Watercolour, meltwater");
    expect(text).toMatch(/Tillsammans: listpris minst [0-9,]+; butikspris minst [0-9,]+/);
    expect(text).toMatch(/enligt listpris minst [−+][0-9,]+ hänger på Watercolour, meltwater/);
    expect(text).toContain("1. Watercolour, meltwater: listpris inget pris; butikspris inget pris");
  });
  it("rates and the day are named, in Swedish", () => {
    expect(wholeOf(written("sv", remake, { ...book, rates: [] }))).toMatch(
      /Värdet är inte uträknat: det saknas en kurs för [A-Z]{3}( och [A-Z]{3})* den 2026-02-28 eller tidigare\n/,
    );
    expect(wholeOf(written("sv", remake, withKit({ valuedOn: null })))).toContain(
      "Värdet är inte uträknat: det är inte sagt vilken dags priser som gäller\n",
    );
  });
  it("stand-ins, reasons and times are left out in words", () => {
    const text = changed({
      finished: null,
      picks: [{ line: "l1", uses: [], by: "person" }],
      essentials: [{ stash: "gone", role: "my own word" }],
      corrections: [{}],
      bends: [{}],
    });
    expect(text).toContain("Omtag från 7 mars 2026, inget köpt för det.");
    expect(text).toMatch(/^1\. Watercolour, meltwater .*: utelämnad med flit$/m);
    expect(text).toContain("Grundsak tillagd: något som inte finns kvar (my own word)");
    expect(text).toContain("\nJag sa något annat; jag menade något annat\n");
    expect(text).toContain("\nRegel tänjd\n");
  });
});

describe("the other forms", () => {
  it("HTML says which language it is in", () => {
    expect(asHtml(written())).toMatch(/^<div lang="sv">\n<p><strong>Slow thaw.*<\/div>\n$/s);
    expect(asHtml(written("en"))).not.toContain("lang=");
  });
  it("CSV keeps the point that data has, so that amounts stay numbers", () => {
    expect(asCsv(written())).toMatch(/,47\.24,48\.00\r\n/);
    expect(asCsv(written())).toMatch(/,\+19\.15\r\n/);
  });
  it("Markdown has its tables", () =>
    expect(asMarkdown(written())).toContain("| Sak | listpris | butikspris |"));
  it("reminders are in the language asked for", () => {
    const few = { log: [{ at: "0:00", text: "x" }], episode: { tags: ["en"] } };
    expect(remindersFor(few, "sv").map(({ id, blocks, text }) => [id, blocks, text.split(" ")[0]])).toEqual([
      ["disclosure", true, "Säg"],
      ["chapters", false, "Kapitel"],
      ["tags", false, "Tre"],
    ]);
  });
});
