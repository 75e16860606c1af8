import { describe, expect, it } from "vitest";
import { hrefOf, kitTabs, parseRoute, type Route, remakeTabs } from "../../../src/ui/app/route.ts";
import fc from "../../chance.ts";

// No outside source: the addresses are our own. URL resolution is that of the WHATWG URL standard, as Node has it.
const id = fc.oneof(
  fc.string({ minLength: 1, unit: "grapheme" }),
  fc.constantFrom(".", "..", "~.", "~~..", "a b", "%", "kit?x#y", "å/ä"),
);

const route: fc.Arbitrary<Route> = fc.oneof(
  fc
    .constantFrom("desk", "kits", "stash", "remakes", "markets", "keep-safe", "parts")
    .map((name) => ({ name }) as Route),
  fc.record({ name: fc.constant("kit" as const), id, tab: fc.constantFrom(...kitTabs) }),
  fc.record({ name: fc.constant("stash-item" as const), id }),
  fc.record({ name: fc.constant("remake" as const), id, tab: fc.constantFrom(...remakeTabs) }),
);

describe("addresses", () => {
  it("lead back to the route they were written for, also through a browser's address bar", () => {
    fc.assert(
      fc.property(route, (one) => {
        const path = new URL(hrefOf(one), "http://localhost/").pathname;
        expect(parseRoute(path)).toEqual(one);
      }),
    );
  });

  it.each([
    ["/kits/low-light", { name: "kit", id: "low-light", tab: "contents" }],
    ["/remakes/7", { name: "remake", id: "7", tab: "stand-ins" }],
    ["/stash/", { name: "stash" }],
  ])("%s opens on its first tab", (path, expected) => {
    expect(parseRoute(path)).toEqual(expected);
  });

  it.each([
    "/kits/a/nothing",
    "/kits/a/worth/more",
    "/stash/a/b",
    "/elsewhere",
    "/markets/SE",
    "/kits/%E0%A4%A",
  ])("%s leads nowhere", (path) => {
    expect(parseRoute(path)).toEqual({ name: "nowhere", path });
  });
});
