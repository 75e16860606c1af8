import { describe, expect, it } from "vitest";
import { sumMoney } from "../../../src/engine/money/index.ts";
import type { Remake, Workbook } from "../../../src/engine/workbook/index.ts";
import { worthOf } from "../../../src/engine/worth/index.ts";
import {
  asCsv,
  asHtml,
  asMarkdown,
  asText,
  bytesOf,
  remindersFor,
  type Writeup,
  writeupOf,
} from "../../../src/engine/writeup/index.ts";
import fc from "../../chance.ts";
import { named, sampleBook } from "../sample.ts";
import { platformFaults, typedParts } from "./platform.ts";

const book = sampleBook();
const remake = named(book.remakes, "rm-slow-thaw");

function written(workbook: Workbook = book, of: Remake = remake): Writeup {
  const result = writeupOf(workbook, of);
  if (!result) throw new Error("the sample's kit is missing");
  return result;
}
const changed = (change: Partial<Remake>): string =>
  asText(written(book, { ...remake, ...change }), 1e6).text;
const whole = asText(written(), 1e6).text;

describe("the text", () => {
  it("opens with the result and the disclosure in at most 100 characters", () => {
    const opening = whole.split("\n")[0] ?? "";
    expect([...opening].length).toBeLessThanOrEqual(100);
    expect(opening).toContain("9 of 9 from my own shelves. All mine already.");
  });
  it("shortens a long title, never the disclosure", () => {
    const opening =
      changed({ episode: { title: "A very long title ".repeat(12), disclosure: "sponsored" } }).split(
        "\n",
      )[0] ?? "";
    expect([...opening].length).toBeLessThanOrEqual(100);
    expect(opening).toMatch(/…: .*Advertisement: paid for\.$/);
  });
  it("says “at least” of totals and gains where a line has no price", () => {
    const bare = (book.kits ?? []).map((kit) =>
      kit.id === remake.kit
        ? {
            ...kit,
            lines: kit.lines?.map((line, i) => (i === 0 ? { ...line, evidence: [], settled: [] } : line)),
          }
        : kit,
    );
    const text = asText(written({ ...book, kits: bare }), 1e6).text;
    const first = named(book.kits, remake.kit).lines?.[0]?.supply.name;
    expect(text).toContain(`Without a list or a shop price: ${first}`);
    expect(text).toMatch(
      /one kit costs [0-9.]+.*, by list price at least [−+][0-9.]+ .*, by shop price at least [−+]/,
    );
    expect(whole).not.toContain("at least");
  });
  it("prints every line's list and shop price, and totals that are their sums", () => {
    const kit = named(book.kits, remake.kit);
    const worth = worthOf(book, kit, ["se"]);
    if (!worth.ok) throw new Error("the sample is valued");
    const market = worth.value.markets[0];
    const rows = whole
      .slice(whole.indexOf("PRICES IN SWEDEN"))
      .split("\n")
      .slice(1, 1 + (kit.lines?.length ?? 0));
    const figures = (word: string) =>
      rows.map((row) => new RegExp(`${word} ([0-9.]+)`).exec(row)?.[1] ?? "none");
    const sum = (word: string) =>
      sumMoney(
        "SEK",
        figures(word).map((amount) => ({ amount, currency: "SEK" })),
      ).amount;
    expect(figures("list")).toEqual(market?.lines.map(({ list }) => list?.amount));
    expect(whole).toContain(`Together: list ${sum("list")}, shop ${sum("shop")}`);
    expect(market?.listTotal.amount).toBe(sum("list"));
  });
  it("names the rates behind converted figures, with their day and source", () => {
    expect(whole).toMatch(/1 EUR = 10\.9870 SEK, 168\.70 JPY on 27 Feb 2026 \(/);
  });
  it("prints rules that were bent, things shown only, and corrections", () => {
    expect(whole).toContain("Rule 3 bent: Masked the edge with tape");
    expect(whole).toContain("Shown only, not used in the piece: Watercolour, ash");
    expect(whole).toContain("I said oil pastel; I meant soft pastel");
  });
  it("names both of a mix", () =>
    expect(whole).toContain("Watercolour, rust water with Watercolour, seal brown"));
  it("says which line a person left open", () => {
    expect(changed({ picks: [{ line: "l1", uses: [], by: "person" }] })).toContain("left out on purpose");
  });
  it("says that the worth is missing, and why, when a rate is", () => {
    const text = asText(written({ ...book, rates: [] }), 1e6).text;
    expect(text).toMatch(/The worth is not worked out: .*(rate|SEK|EUR)/);
    expect(text).toContain("WHAT WAS IN IT");
  });
  it("has cautions for what can hurt, and defers to the label", () => {
    expect(whole).toContain("do not breathe the dust");
    expect(whole).toContain("Read the label and the maker's safety data sheet");
    expect(whole).not.toMatch(/non-?toxic|\bsafe\b/i);
  });
});

describe("what a platform takes", () => {
  it("the sample's text", () => expect(platformFaults(whole)).toEqual([]));

  it("any text a person may type", () => {
    fc.assert(
      fc.property(typedParts, (parts) => {
        expect(platformFaults(changed(parts))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});

describe("within a limit", () => {
  it("counts bytes as UTF-8 does (checked against the platform's encoder)", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(bytesOf(text)).toBe(new TextEncoder().encode(text).length);
      }),
    );
  });
  it("never exceeds it, never cuts a line, and says what it left out", () => {
    const lines = new Set(whole.split("\n"));
    const sample = written();
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9000 }), (limit) => {
        const fitted = asText(sample, limit);
        expect(fitted.bytes).toBeLessThanOrEqual(limit);
        expect(new TextEncoder().encode(fitted.text).length).toBe(fitted.bytes);
        const own = fitted.text.split("\n").filter((line) => !/left out for length/i.test(line));
        expect(own.filter((line) => !lines.has(line))).toEqual([]);
        if (fitted.leftOut.length > 0 && limit > 700) expect(fitted.text).toContain(fitted.leftOut[0]);
      }),
      { numRuns: 200 },
    );
  });
  it("is 5,000 bytes unless said otherwise", () => expect(asText(written()).bytes).toBeLessThanOrEqual(5000));
});

describe("other forms", () => {
  const hostile = written(book, {
    ...remake,
    questions: ["=1+1", "+cmd", '"quoted", twice', "<img src=x onerror=alert(1)>", "a | b"],
  });

  // Source: RFC 4180 for quoting; the list of prefixes that spreadsheets run is OWASP's "CSV Injection".
  it("CSV is inert in a spreadsheet, and quoted", () => {
    const csv = asCsv(hostile);
    expect(csv).toContain("\r\n'=1+1\r\n");
    expect(csv).toContain("\r\n'+cmd\r\n");
    expect(csv).toContain('\r\n"""quoted"", twice"\r\n');
    expect(csv.split("\r\n").filter((row) => /^[=@\t]/.test(row))).toEqual([]);
  });
  it("CSV keeps amounts as numbers", () => expect(asCsv(written())).toMatch(/,47\.24,48\.00\r\n/));
  it("HTML shows text as text", () => {
    expect(asHtml(hostile)).not.toContain("<img");
    expect(asHtml(hostile)).toContain("‹img src=x onerror=alert(1)›");
    expect(asHtml(hostile)).not.toMatch(/style=|<script/);
  });
  it("Markdown escapes what would be markup", () => expect(asMarkdown(hostile)).toContain("a \\| b"));
  it("all three have the full price table whatever the limit", () => {
    for (const form of [asCsv(written()), asHtml(written()), asMarkdown(written())])
      expect(form).toContain("Prices in Japan, JPY");
  });
});

describe("reminders", () => {
  it("a missing disclosure blocks copying", () => {
    expect(remindersFor({ log: [], episode: null })).toMatchObject([{ id: "disclosure", blocks: true }]);
  });
  it("the sample needs none", () => expect(remindersFor(remake)).toEqual([]));
  it("too few chapters and tags are said", () => {
    const few = { log: [{ at: "0:00", text: "x" }], episode: { disclosure: "own" as const, tags: ["one"] } };
    expect(remindersFor(few).map(({ id }) => id)).toEqual(["chapters", "tags"]);
  });
});
