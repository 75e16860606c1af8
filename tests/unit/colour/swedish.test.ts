import { describe, expect, it } from "vitest";
import { labFromHex, missWords, plainName } from "../../../src/engine/colour/index.ts";

const at = (l: number, a: number, b: number) => ({ white: "D65", l, a, b }) as const;

// Everyday Swedish, from memory; a colour is "en färg", so every word of a name stands in the common gender.
describe("plainName in Swedish", () => {
  it.each([
    ["#6b7d3a", "gulgrön"],
    ["#3a4420", "mörk dämpad gulgrön"],
    ["#ff0000", "klar röd"],
    ["#f5b8c0", "ljus dämpad rosa"],
    ["#5a3a22", "mörk dämpad brun"],
    ["#0a2a30", "mycket mörk gråaktig turkos"],
    ["#ffffff", "vit"],
    ["#000000", "svart"],
    ["#c8c8c8", "ljusgrå"],
    ["#808080", "grå"],
    ["#404040", "mörkgrå"],
  ])("%s is %s", (hex, name) => expect(plainName(labFromHex(hex), "sv")).toBe(name));
});

describe("missWords in Swedish", () => {
  it("says nothing of equal colours", () => {
    expect(missWords(at(50, 20, 20), at(50, 20, 20), "sv")).toEqual([]);
  });
  it.each([
    [at(53, 20, 20), ["lite ljusare"]],
    [at(44, 20, 20), ["mörkare"]],
    [at(20, 20, 20), ["mycket mörkare"]],
  ])("measures lightness", (other, words) => expect(missWords(at(50, 20, 20), other, "sv")).toEqual(words));
  it.each([
    [at(50, 30, 30), at(50, 25, 25), "lite mer dämpad"],
    [at(50, 25, 25), at(50, 30, 30), "lite starkare"],
  ])("and strength", (kit, other, word) => expect(missWords(kit, other, "sv")).toEqual([word]));
  it("names the neighbouring hue that it leans to", () => {
    expect(missWords(labFromHex("#3060c0"), labFromHex("#5060c8"), "sv")[0]).toBe("drar åt violett");
    expect(missWords(labFromHex("#3060c0"), labFromHex("#0070a8"), "sv")).toContain("drar åt turkos");
    expect(missWords(at(50, 0, 0), labFromHex("#8a6a6a"), "sv")).toContain("drar åt rött");
  });
});
