import { describe, expect, it } from "vitest";
import { asDone } from "../../../src/ui/words/sv/done.ts";
import { kitsWords as kits } from "../../../src/ui/words/sv/kits.ts";
import { marketsWords as markets } from "../../../src/ui/words/sv/markets.ts";
import { remakeWords as remakes } from "../../../src/ui/words/sv/remakes.ts";
import { worthWords as worth } from "../../../src/ui/words/sv/worth.ts";

// No outside source: the sentences are the project's own.

describe("a count", () => {
  it.each([
    [kits.list.count(1, 0), "Ett kit inskrivet."],
    [kits.list.count(1, 1), "Ett kit inskrivet, ett omtaget."],
    [kits.list.count(10, 2), "Tio kit inskrivna, två omtagna."],
    [kits.list.lines(1), "en rad"],
    [kits.list.gaps(2), "två luckor"],
    [kits.prices.missing(1, 8, "Norge"), "En av åtta saknar fortfarande pris i Norge."],
    [kits.prices.missing(8, 8, "Norge"), "Alla åtta saknar fortfarande pris i Norge."],
    [kits.prices.pack.sheets(1), "ett ark"],
    [remakes.list.lead(1, 0), "Ett omtag på gång."],
    [remakes.list.lead(2, 1), "Två omtag på gång, ett klart."],
    [remakes.list.lead(0, 3), "Tre omtag klara, inget på gång."],
    [remakes.standIns.lead(0, 8), "Ingen av åtta har en ersättare."],
    [remakes.standIns.fetchedSome(0, 8), "ingen av åtta hämtad"],
    [remakes.standIns.fetchedSome(3, 8), "tre av åtta hämtade"],
    [remakes.bench.lead(1), "Ett steg antecknat."],
    [remakes.bench.leadMore(1, 2), "En grundsak tillagd. Två regler tänjda, och det är sagt."],
    [markets.markets.removed("Norge", 1, 2), "Tog bort Norge, med 1 butik och 2 priser som hittats där"],
    [worth.beside.parcels(3, "Japan", 1), "Av mina 3 paket från Japan kostade ett något vid gränsen."],
    [worth.finding.atLeast(1), "En rad saknar listpris eller butikspris, så varje summa är ”minst”."],
  ])("is inflected: %s", (said, expected) => expect(said).toBe(expected));
});

describe("an act", () => {
  const { acts, standIns } = remakes;
  it.each([
    [acts.leaveOut("Gouache, mossa"), "Lämnade Gouache, mossa utan ersättare"],
    [acts.gone.dried("Gouache, mossa"), "Markerade Gouache, mossa som uttorkad"],
    [acts.twins(true), "Lät tvillingar vara med"],
    [acts.takePalette, "Tog ersättarna som håller ihop paletten"],
    [standIns.tickFetched("Gouache, mossa"), "Bockade av Gouache, mossa som hämtad"],
    [markets.file.label(2), "Lade till kurserna för 2 dagar"],
  ])("reads as done: %s", (act, done) => expect(asDone(act)).toBe(done));
});

describe("the runner-up", () => {
  it("says what a swap costs here, and on all lines", () => {
    const { next, costs, costsApart } = remakes.standIns;
    expect(next("skiffer", "82", costs(6))).toBe("Nästa: skiffer, 82; 6 mindre.");
    expect(next("oliv", "93", costsApart(-13, 3, 8))).toBe(
      "Nästa: oliv, 93; 13 mer här, 3 mindre på alla åtta.",
    );
  });
});
