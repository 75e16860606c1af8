import { describe, expect, it } from "vitest";
import {
  differenceWord,
  hueGroup,
  type Lab,
  labFromHex,
  labOf,
  lightnessBand,
  missWords,
  parseColour,
  plainName,
} from "../../../src/engine/colour/index.ts";

describe("labOf", () => {
  it("takes measured Lab before hex", () => {
    expect(labOf({ hex: "#ffffff", lab: [50, 1, 2], white: "D65" })).toEqual({
      white: "D65",
      l: 50,
      a: 1,
      b: 2,
    });
  });
  it("takes Lab without a white as D65", () => expect(labOf({ lab: [50, 1, 2] })?.l).toBe(50));
  it("knows nothing of a colour in words only", () => expect(labOf({ name: "moss" })).toBeNull());
  it("knows nothing of none", () => expect(labOf(null)).toBeNull());
});

// The limits are stated in docs and are ours.
describe("differenceWord changes exactly at its limits", () => {
  it.each([
    [0, "indistinguishable"],
    [0.9999, "indistinguishable"],
    [1, "only side by side"],
    [2, "close"],
    [5, "kindred"],
    [10, "different"],
    [20, "far"],
  ])("%d is %s", (deltaE, word) => expect(differenceWord(deltaE)).toBe(word));
});

// Source of the colours: CSS Color Module Level 4, named colours; that the everyday name fits is common sense.
describe("plainName says what a person would", () => {
  it.each([
    ["#ff0000", "red"],
    ["#0000ff", "blue"],
    ["#008000", "green"],
    ["#ffff00", "yellow"],
    ["#800080", "purple"],
    ["#a52a2a", "red"],
    ["#8b4513", "brown"],
    ["#808000", "olive"],
    ["#ffc0cb", "pink"],
    ["#808080", "grey"],
    ["#ffffff", "white"],
    ["#000000", "black"],
    ["#008080", "teal"],
    ["#ff8c00", "orange"],
  ])("%s has %s in its name", (hex, word) => expect(plainName(labFromHex(hex))).toContain(word));

  it.each([
    ["#6b7d3a", "greens", "middling"],
    ["#fdfdfd", "greys", "very light"],
    ["#101418", "greys", "very dark"],
    ["#1f2f6f", "blues", "very dark"],
  ] as const)("%s is laid out under %s, %s", (hex, group, band) => {
    expect(hueGroup(labFromHex(hex))).toBe(group);
    expect(lightnessBand(labFromHex(hex))).toBe(band);
  });
});

describe("missWords", () => {
  const at = (l: number, a: number, b: number): Lab => ({ white: "D65", l, a, b });
  it("says nothing of equal colours", () => expect(missWords(at(50, 20, 20), at(50, 20, 20))).toEqual([]));
  it("says lighter and darker", () => {
    expect(missWords(at(50, 20, 20), at(53, 20, 20))).toEqual(["a little lighter"]);
    expect(missWords(at(50, 20, 20), at(44, 20, 20))).toEqual(["darker"]);
    expect(missWords(at(70, 20, 20), at(20, 20, 20))).toEqual(["much darker"]);
  });
  it("says softer and stronger", () => {
    expect(missWords(at(50, 30, 30), at(50, 25, 25))).toEqual(["a little softer"]);
    expect(missWords(at(50, 25, 25), at(50, 30, 30))).toEqual(["a little stronger"]);
  });
  it("names the neighbouring hue, in the direction of the turn", () => {
    expect(missWords(labFromHex("#3060c0"), labFromHex("#5060c8"))[0]).toBe("leaning to violet");
    expect(missWords(labFromHex("#3060c0"), labFromHex("#0070a8"))).toContain("leaning to teal");
  });
  it("gives a grey the hue it leans to, and two greys none", () => {
    expect(missWords(at(50, 0, 0), labFromHex("#8a6a6a")).join()).toContain("leaning to");
    expect(missWords(at(50, 0, 0), at(50, 1, 1)).join()).not.toContain("leaning");
  });
  it("gives the larger of two first, and never three", () => {
    const words = missWords(labFromHex("#6b7d3a"), labFromHex("#a04040"));
    expect(words).toHaveLength(2);
  });
});

describe("parseColour", () => {
  it.each(["#6b7d3a", "6B7D3A", " #6b7d3a "])("reads %s", (text) => {
    expect(parseColour(text)).toEqual({ ok: true, value: labFromHex("#6b7d3a") });
  });
  it("reads three digits", () =>
    expect(parseColour("#fff")).toEqual({ ok: true, value: labFromHex("#ffffff") }));
  it.each(["lab(50 -12.5 30)", "lab(50, -12.5, 30)", "LAB( 50 -12.5 30 )"])("reads %s", (text) => {
    expect(parseColour(text)).toEqual({ ok: true, value: { white: "D65", l: 50, a: -12.5, b: 30 } });
  });
  it.each(["", "moss", "#12345", "lab(1 2)", "lab(a b c)"])("refuses %j and quotes it", (text) => {
    const outcome = parseColour(text);
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.fault.problem).toContain(`"${text}"`);
  });
});
