import { describe, expect, it } from "vitest";
import { firstSpoken } from "../../../src/store/device.ts";
import { localeFor } from "../../../src/ui/words/format.ts";

describe("the language of the page", () => {
  it.each([
    [["sv-SE", "en"], "sv"],
    [["SV"], "sv"],
    [["de-DE", "sv-FI", "en-GB"], "sv"],
    [["de-DE", "fr"], "en"],
    [["svk"], "en"],
    [[], "en"],
  ] as const)("for a reader of %j is %s", (wanted, language) => expect(firstSpoken(wanted)).toBe(language));
});

describe("the locale of numbers and dates", () => {
  it("is the one chosen, whatever else", () => expect(localeFor("ja-JP", "sv-SE", "sv")).toBe("ja-JP"));
  it("is the browser's own, also where no words are in its language", () => {
    expect(localeFor(null, "de-AT", "en")).toBe("de-AT");
    expect(localeFor(null, "sv-FI", "sv")).toBe("sv-FI");
    expect(localeFor(null, undefined, "en")).toBeUndefined();
  });
  it("follows the words where the browser's is another language that is spoken here", () => {
    expect(localeFor(null, "en-US", "sv")).toBe("sv");
    expect(localeFor(null, "sv-SE", "en")).toBe("en");
  });
});
