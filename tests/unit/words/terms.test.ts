import { describe, expect, it } from "vitest";
import { hrefOf, kitTabs, parseRoute, remakeTabs } from "../../../src/ui/app/route.ts";
import { termsOf } from "../../../src/ui/app/terms-of.ts";
import { notAskedIn, termsIn } from "../../../src/ui/parts/read/terms-in.ts";
import { meanings as meaningsEn } from "../../../src/ui/words/en/meanings.ts";
import { terms as en } from "../../../src/ui/words/en/terms.ts";
import { meanings as meaningsSv } from "../../../src/ui/words/sv/meanings.ts";
import { terms as sv } from "../../../src/ui/words/sv/terms.ts";
import type { Term } from "../../../src/ui/words/terms.ts";
import { groups } from "../../../src/ui/words-page/groups.ts";

const all = Object.keys(en) as readonly Term[];

describe("our own words", () => {
  it("stand on their page once each", () => {
    expect(Object.values(groups).flat().toSorted()).toEqual(all.toSorted());
  });
  it("are each asked at some place", () => {
    const places = [
      ...["desk", "kits", "stash", "remakes", "markets", "keep-safe"].map((name) =>
        parseRoute(name === "desk" ? "/" : `/${name}`),
      ),
      ...kitTabs.map((tab) => parseRoute(hrefOf({ name: "kit", id: "k", tab }))),
      ...remakeTabs.map((tab) => parseRoute(hrefOf({ name: "remake", id: "r", tab }))),
    ];
    expect([...new Set(places.flatMap(termsOf))].toSorted()).toEqual(all.toSorted());
  });
  it.each(all)("%s has a meaning in both languages, told apart from its name", (term) => {
    for (const [forms, meanings] of [
      [en, meaningsEn],
      [sv, meaningsSv],
    ] as const) {
      expect(meanings[term].text).toMatch(/^\p{Lu}.*[.?]$/su);
      expect(meanings[term].text.toLowerCase().replace(/\.$/, "")).not.toBe(forms[term][0]);
    }
    expect(meaningsSv[term].text).not.toBe(meaningsEn[term].text);
  });
});

describe("a sentence", () => {
  it("offers each word the first time it stands there, and keeps every letter", () => {
    const text = "Seven of eight have a stand-in. A stand-in is better than a gap; gaps stay open.";
    const stretches = termsIn(text, ["standIn", "gap"]);
    expect(stretches.map((stretch) => stretch.text).join("")).toBe(text);
    expect(stretches.filter(({ term }) => term).map((stretch) => stretch.text)).toEqual(["stand-in", "gap"]);
  });
  it("offers no part of a longer word", () => {
    expect(termsIn("A kitchen, a stashed tier-like thing", ["kit", "stash", "tier"])).toEqual([
      { text: "A kitchen, a stashed tier-like thing", term: null },
    ]);
  });
  it("takes the longer of two that overlap", () => {
    const stretches = termsIn("Keep the palette together here", ["palette"]);
    expect(stretches[0]).toEqual({ text: "Keep the palette together", term: "palette" });
  });
  it("leaves to the lead what the lead offers", () => {
    expect(notAskedIn("One copy", ["copy", "notebook"])).toEqual(["notebook"]);
    expect(notAskedIn(null, ["copy"])).toEqual(["copy"]);
  });
});
