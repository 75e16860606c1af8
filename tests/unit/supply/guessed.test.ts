import { describe, expect, it } from "vitest";
import { labFromHex, lchOf } from "../../../src/engine/colour/index.ts";
import { guessedHex, hexOfWord, isGuessedColour, readLine } from "../../../src/engine/supply/index.ts";

// What words bring to mind is ours, no source; which way they lead is common practice, no source.

const lch = (name: string) => lchOf(labFromHex(guessedHex(name) ?? "#ff00ff"));

describe("the colour that a name brings to mind", () => {
  it.each([
    ["deep sage", "sage"],
    ["Dark sky", "sky"],
    ["mörk salvia", "salvia"],
  ])("%s is darker than %s", (deep, plain) => {
    expect(guessedHex(deep)).not.toBeNull();
    expect(lch(deep).l).toBeLessThan(lch(plain).l - 10);
  });
  it("goes by words of tone in both languages, and through a hyphen", () => {
    expect(guessedHex("pale grey-green")).toBe(guessedHex("ljust grågrön"));
    expect(lch("pale grey-green").l).toBeGreaterThan(75);
    expect(lch("pale grey-green").c).toBeLessThan(20);
  });
  it("is the table's own for a name that is in it", () => {
    expect(guessedHex("dark green")).toBe(hexOfWord("dark green"));
  });
  it.each(["fog blue", "red blue", "deep", "winter slate", "light", ""])("is open for “%s”", (name) => {
    expect(guessedHex(name)).toBeNull();
  });
  it("is told from one that was given", () => {
    const { supply } = readLine("gouache tube, pale grey-green");
    expect(supply.colour).toEqual({ name: "pale grey-green", hex: guessedHex("pale grey-green") });
    expect(isGuessedColour(supply.colour)).toBe(true);
    expect(isGuessedColour({ ...supply.colour, from: "typed" })).toBe(false);
  });
  it("takes in the word of tone before it, small or with a capital", () => {
    expect(readLine("Gouache Deep sage 15 ml").supply.colour?.name).toBe("deep sage");
  });
});
