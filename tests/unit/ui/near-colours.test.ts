import { describe, expect, it } from "vitest";
import type { StashItem } from "../../../src/engine/supply/index.ts";
import { nearColours } from "../../../src/ui/app/near-colours.ts";

const owned = (id: string, hex: string | null): StashItem => ({
  id,
  supply: { family: "paint", name: id, ...(hex === null ? {} : { colour: { hex } }) },
});

const stash = [
  owned("navy", "#000080"),
  owned("moss", "#6b7d3a"),
  owned("rust", "#a83c09"),
  owned("tape", null),
];
const found = (text: string) => nearColours(stash, text).map(({ name }) => name);

describe("nearColours", () => {
  it("puts the nearest to a hex first, with how far each is", () => {
    expect(found("#6b7d3b")).toEqual(["moss", "rust", "navy"]);
    expect(nearColours(stash, "#6b7d3a")[0]?.fact).toBe("0.0 apart");
  });

  it("reads colour words", () => {
    // "darkblue" is #00008b in CSS Color Module Level 4, section 6.1
    expect(found("dark blue")[0]).toBe("navy");
  });

  it("takes a word that only looks like a hex for a word, and leaves out what has no colour", () => {
    expect(found("facade")).toEqual([]);
    expect(found("tape")).toEqual([]);
    expect(found("#fff")).not.toContain("tape");
  });
});
