import { describe, expect, it } from "vitest";
import {
  estimateLine,
  type Line,
  type PricedKit,
  possiblePrecedents,
} from "../../../src/engine/price/index.ts";
import { bookOf, eur, found, kitOf, lineOf, sek } from "./book.ts";

const named = (line: string) => found("precedent", { price: null, line });
const earlier = (id: string, lines: readonly Line[], period = "2025-08"): PricedKit => ({
  id,
  period,
  lines,
});

/** The list estimate in Sweden of a line of a kit that comes after these. */
function listAfter(line: Line, kits: readonly PricedKit[], market = "se") {
  const kit = kitOf([line]);
  const { list, faults } = estimateLine(bookOf(...kits, kit), kit, line, market);
  return {
    list,
    faults,
    figures: list && [list.method, list.likely.amount, list.low.amount, list.high.amount],
  };
}

// The rules are the project's own; halves are worked out by hand.
describe("what earlier cards said", () => {
  const cheap = earlier("k-a", [lineOf([found("list", { market: "se", price: sek("40") })])]);
  const dear = earlier("k-b", [lineOf([found("list", { market: "se", price: sek("55.05") })])]);
  const middle = earlier("k-c", [lineOf([found("list", { market: "se", price: sek("41") })])]);

  it("least, greatest, and halfway between, rounded", () => {
    const line = lineOf([named("k-a/l1"), named("k-b/l1"), named("k-c/l1")]);
    const { list, figures } = listAfter(line, [cheap, dear, middle]);
    expect(figures).toEqual(["precedents", "47.53", "40.00", "55.05"]);
    expect(list?.sentence).toBe(
      "What earlier kits' lists said, halfway from SEK 40.00 to SEK 55.05 over 3 prices.",
    );
    expect(list?.trace.sources.map(({ of }) => of)).toEqual(["k-a/l1", "k-b/l1", "k-c/l1"]);
  });
  it("one alone is what it is", () => {
    const { list, figures } = listAfter(lineOf([named("k-a/l1")]), [cheap]);
    expect(figures).toEqual(["precedents", "40.00", "40.00", "40.00"]);
    expect(list?.sentence).toBe("What an earlier kit's list said, SEK 40.00.");
  });
  it("its settled list price before its newest", () => {
    const settled = earlier("k-s", [
      lineOf([found("list", { market: "se", price: sek("40"), date: "2026-01-01" })], {
        settled: [
          { kind: "list", price: sek("44") },
          { kind: "street", price: sek("1") },
        ],
      }),
    ]);
    expect(listAfter(lineOf([named("k-s/l1")]), [settled]).figures?.[1]).toBe("44.00");
  });
  it("its settled method where it settled one", () => {
    const line = lineOf(
      [found("list", { market: "se", price: sek("40") }), found("card", { price: sek("48") })],
      {
        settled: [{ kind: "list", method: "card" }],
      },
    );
    expect(listAfter(lineOf([named("k-m/l1")]), [earlier("k-m", [line])]).figures?.[1]).toBe("48.00");
  });
  it("the newest list price, of whatever market, tax added, on this kit's rates", () => {
    const line = lineOf([
      found("list", { market: "se", price: sek("40"), date: "2025-08-01" }),
      found("list", { market: "ie", price: eur("4"), plusTax: "0.25", date: "2025-08-02" }),
      found("shop", { market: "se", price: sek("1"), date: "2025-08-03" }),
    ]);
    expect(listAfter(lineOf([named("k-n/l1")]), [earlier("k-n", [line])]).figures?.[1]).toBe("55.13");
  });
  it("says nothing where the line it names knows no price", () => {
    expect(
      listAfter(lineOf([named("k-z/l1"), named("nowhere/l1")]), [earlier("k-z", [lineOf([])])]).list,
    ).toBe(null);
  });
  it("a figure of its own counts where it names no line", () => {
    const own = found("precedent", { price: sek("33") });
    expect(listAfter(lineOf([own]), []).figures).toEqual(["precedents", "33.00", "33.00", "33.00"]);
  });
  it("does not go in circles", () => {
    const method = [{ kind: "list" as const, method: "precedents" }];
    const round = earlier("k-r", [lineOf([named("k1/l1"), named("k-a/l1")], { settled: method })]);
    const { figures } = listAfter(lineOf([named("k-r/l1"), named("k1/l1")], { settled: method }), [
      round,
      cheap,
    ]);
    expect(figures).toEqual(["precedents", "40.00", "40.00", "40.00"]);
  });
  it("many that lead to one another are soon told", () => {
    const method = [{ kind: "list" as const, method: "precedent" }];
    const chain = Array.from({ length: 40 }, (_, at) => {
      const before = Array.from({ length: at }, (__, other) => named(`c${other}/l1`));
      return earlier(`c${at}`, [
        lineOf([found("precedent", { price: sek(String(at + 1)) }), ...before], { settled: method }),
      ]);
    });
    expect(listAfter(lineOf(chain.map(({ id }) => named(`${id}/l1`))), chain).figures?.[2]).toBe("1.00");
  });

  it.each([
    { pack: { ml: 45 }, method: "scaled", why: "a pack three times as large is near enough" },
    { pack: { ml: 5 }, method: "scaled", why: "and one a third as large" },
    { pack: { ml: 46 }, method: "precedents", why: "beyond that earlier cards count first" },
    { pack: { ml: 4.9 }, method: "precedents", why: "either way" },
  ])("$why", ({ pack, method }) => {
    const line = lineOf([named("k-a/l1"), found("list", { market: "se", price: sek("90"), pack })]);
    expect(listAfter(line, [cheap]).list?.method).toBe(method);
  });
  it("a rate missing for an earlier price is a fault of the line that names it", () => {
    const foreign = earlier("k-f", [lineOf([found("list", { price: { amount: "3", currency: "NOK" } })])]);
    const { faults } = listAfter(lineOf([found("not-sold"), named("k-f/l1")]), [foreign]);
    expect(faults.map(({ place }) => place)).toEqual(["kits[1].lines[0].evidence[1]"]);
  });
});

describe("precedents on offer", () => {
  const priced = [found("list", { market: "se", price: sek("40") })];
  const paint = (ml: number, id: string): Line => ({
    ...lineOf(priced, { id }),
    supply: { family: "paint", name: "Gouache", traits: { ml } },
  });
  it("same family, like size, with a list price, from earlier kits, the newest first", () => {
    const kits = [
      earlier(
        "old",
        [paint(15, "same"), paint(60, "tall"), paint(20, "near"), lineOf([], { id: "bare" })],
        "2025-01",
      ),
      earlier(
        "new",
        [paint(7.5, "half"), { id: "pen", supply: { family: "liner", name: "Pen" }, evidence: priced }],
        "2025-02",
      ),
      earlier("later", [paint(15, "same")], "2026-05"),
    ];
    const line = lineOf([]);
    const kit = kitOf([line]);
    const offered = possiblePrecedents(bookOf(...kits, kit), kit, line);
    expect(offered.map(({ reference }) => reference)).toEqual(["new/half", "old/same", "old/near"]);
  });
});
