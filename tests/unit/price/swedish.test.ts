import { describe, expect, it } from "vitest";
import {
  type Evidence,
  estimateKit,
  estimateLine,
  type Line,
  plainDate,
} from "../../../src/engine/price/index.ts";
import { valueKit } from "../../../src/engine/worth/index.ts";
import { bookOf, eur, found, jpy, kitOf, lineOf, sek } from "./book.ts";

const gouache = (ml: number): Line["supply"] => ({
  family: "paint",
  name: "Gouache",
  traits: { medium: "gouache", ml },
});

function estimate(evidence: readonly Evidence[], more: Partial<Line> = {}) {
  const line = lineOf(evidence, more);
  const kit = kitOf([line]);
  return estimateLine(bookOf(kit), kit, line, "se", "sv");
}
const listSays = (evidence: readonly Evidence[], more: Partial<Line> = {}) =>
  estimate(evidence, more).list?.sentence;
const shopSays = (evidence: readonly Evidence[]) => estimate(evidence).street?.sentence;

describe("how a list price came about, in Swedish", () => {
  it.each([
    [
      found("list", { market: "se", date: "2026-04-20" }),
      "Listpris här, 5,40 EUR den 20 apr. 2026, omräknat med kursen 1 EUR = 11,0250 SEK den 31 mars 2026.",
    ],
    [
      found("list", { market: "ie", plusTax: "0.235" }),
      "Listpris i Ireland, 5,40 EUR, med 23,5 % skatt tillagd, omräknat med kursen 1 EUR = 11,0250 SEK den 31 mars 2026.",
    ],
    [
      found("list", { price: jpy("540") }),
      "Listpris någon annanstans, 540 JPY, omräknat med kursen 1 EUR = 163,45 JPY = 11,0250 SEK den 31 mars 2026.",
    ],
    [
      found("card", { price: sek("60"), date: "2026-05-12" }),
      "Kitets eget kort säger 60,00 SEK den 12 maj 2026.",
    ],
    [
      found("list", { market: "se", price: sek("120"), pack: { ml: 30 } }),
      "Från en annan förpackning här, 120,00 SEK, i proportion till 15 av förpackningens 30 ml; små förpackningar kostar oftast mer.",
    ],
    [
      found("list", { market: "se", price: sek("120"), pack: { count: 3 } }),
      "Från en annan förpackning här, 120,00 SEK, i proportion till 1 av förpackningens 3 st; små förpackningar kostar oftast mer.",
    ],
    [found("guess", { price: sek("50") }), "En gissning, 50,00 SEK."],
    [
      found("guess", { price: sek("50"), low: sek("40"), high: sek("55.5") }),
      "En gissning, 50,00 SEK, mellan 40,00 SEK och 55,50 SEK.",
    ],
  ])("%j", (evidence, sentence) => expect(listSays([evidence])).toBe(sentence));

  it("of another size of paper", () => {
    const supply: Line["supply"] = { family: "paper", name: "Ark", traits: { size: "A5", sheets: 20 } };
    expect(
      listSays([found("list", { market: "se", price: sek("80"), pack: { size: "A4" } })], { supply }),
    ).toMatch(
      /^Från en annan förpackning här, 80,00 SEK, i proportion till 0,49\d+ gånger så mycket papper; /,
    );
  });

  it("of a fit", () => {
    const known = [10, 20, 40, 80].map((ml, at) =>
      lineOf([found("list", { price: sek(String([100, 200, 300, 700][at])) })], {
        id: `a${ml}`,
        supply: gouache(ml),
      }),
    );
    const asked = lineOf([found("card", { price: sek("300"), pack: { ml: 40 } })], { supply: gouache(20) });
    const kit = kitOf([asked]);
    const { list } = estimateLine(
      bookOf(kitOf(known, { id: "k0", period: "2026-03" }), kit),
      kit,
      asked,
      "se",
      "sv",
    );
    expect(list?.sentence).toMatch(
      /^Från en annan förpackning någon annanstans, 300,00 SEK, skalat till 20 av förpackningens 40 ml så som 4 priser på sådant växer med mängden, med exponenten 0,\d\d, mellan \d+,\d\d SEK och \d+,\d\d SEK\.$/,
    );
  });

  it("of earlier kits", () => {
    const earlier = (id: string, amount: string) =>
      kitOf([lineOf([found("list", { price: sek(amount), market: "se" })])], { id, period: "2026-01" });
    const named = (...ids: readonly string[]) =>
      lineOf(ids.map((id) => found("precedent", { price: null, line: `${id}/l1` })));
    const say = (line: Line) => {
      const kit = kitOf([line], { id: "now" });
      return estimateLine(bookOf(earlier("a", "40"), earlier("b", "50"), kit), kit, line, "se", "sv").list
        ?.sentence;
    };
    expect(say(named("a"))).toBe("Vad listan i ett tidigare kit sa, 40,00 SEK.");
    expect(say(named("a", "b"))).toBe(
      "Vad listorna i tidigare kit sa, mitt emellan 40,00 SEK och 50,00 SEK, av 2 priser.",
    );
  });

  it("of what a person settled", () => {
    const guess = found("guess", { price: sek("50") });
    expect(
      listSays([guess], { settled: [{ kind: "list", price: eur("4"), market: "se", reason: "Kvittot." }] }),
    ).toBe(
      "Priset jag går på här, 4,00 EUR, omräknat med kursen 1 EUR = 11,0250 SEK den 31 mars 2026, därför att: Kvittot.",
    );
    expect(listSays([guess], { settled: [{ kind: "list", price: sek("65") }] })).toBe(
      "Priset jag går på överallt, 65,00 SEK.",
    );
    expect(
      listSays([guess], { settled: [{ kind: "list", method: "guess", reason: "Listan är gammal." }] }),
    ).toBe("En gissning, 50,00 SEK; eget val, därför att: Listan är gammal.");
    expect(listSays([guess], { settled: [{ kind: "list", method: "guess" }] })).toBe(
      "En gissning, 50,00 SEK; eget val.",
    );
  });
});

describe("how a shop price came about, in Swedish", () => {
  it.each([
    [
      { price: sek("40"), shop: "s1", reducedFrom: sek("60") },
      "Lägsta butikspris här hos Fjordpapper, 40,00 SEK den 20 apr. 2026, nedsatt från 60,00 SEK.",
    ],
    [{ price: sek("40"), market: "se" }, "Lägsta butikspris här, 40,00 SEK den 20 apr. 2026."],
    [
      { price: eur("4"), shop: "s3" },
      "Lägsta butikspris i Ireland hos Harbour Paints, 4,00 EUR den 20 apr. 2026, omräknat med kursen 1 EUR = 11,0250 SEK den 31 mars 2026.",
    ],
  ])("%j", (more, sentence) =>
    expect(shopSays([found("shop", { date: "2026-04-20", ...more })])).toBe(sentence),
  );

  it("where the list price stands in", () => {
    expect(shopSays([found("list", { market: "se", price: sek("60") })])).toBe(
      "Inget butikspris, så listpriset får gälla: listpris här, 60,00 SEK.",
    );
  });
});

it("a whole kit and its worth carry the language to every line", () => {
  const line = lineOf([found("guess", { price: sek("50") })]);
  const kit = { ...kitOf([line]), title: "Bränning", maker: "Tidvatten", period: "2026-04", lines: [line] };
  const priced = estimateKit(bookOf(kit), kit, "se", "sv");
  expect(priced.ok && priced.value[0]?.estimate.list?.sentence).toBe("En gissning, 50,00 SEK.");
  const markets = [{ id: "se", name: "Sweden", currency: "SEK" }];
  const valued = valueKit({ kits: [kit], markets }, kit, ["se"], "sv");
  expect(valued.ok && valued.value.whys[0]?.lines[0]?.estimate.street?.sentence).toBe(
    "Inget butikspris, så listpriset får gälla: en gissning, 50,00 SEK.",
  );
});

it("dates are written as Swedes do", () => {
  // Source: Unicode CLDR, sv, abbreviated months in format style.
  const cldr = new Intl.DateTimeFormat("sv", {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  });
  for (let month = 1; month <= 12; month++) {
    const date = `2026-${String(month).padStart(2, "0")}-07`;
    expect(plainDate(date, "sv")).toBe(cldr.format(new Date(`${date}T12:00:00Z`)));
  }
});
