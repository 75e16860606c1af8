import { describe, expect, it } from "vitest";
import { readColourSet } from "../../../src/engine/intake/index.ts";
import { isGuessedColour } from "../../../src/engine/supply/index.ts";
import fc from "../../chance.ts";

// How charts and shops list colours is common practice, no source; hex and rgb() are written as in CSS Color 4.

const moss = { hex: "#6b7d3a", from: "typed" };

describe("readColourSet", () => {
  it.each([
    ["12 moss #6b7d3a", "12", "moss", moss],
    ["#6B7D3A moss 12", "12", "moss", moss],
    ["12\tmoss\t#6b7d3a", "12", "moss", moss],
    ["moss;B-12;6b7d3a", "B-12", "moss", moss],
    ["no. 12, moss, rgb(107, 125, 58)", "12", "moss", moss],
    ["• W340: sea moss — #6b7d3a", "W340", "sea moss", moss],
    ["moss (12) #6b7d3a", "12", "moss", moss],
    ["12. moss #6b7d3a", "12", "moss", moss],
    ["#673", null, null, { hex: "#667733", from: "typed" }],
    ["12 fjord mist", "12", "fjord mist", { name: "fjord mist" }],
    ["facade", null, "facade", { name: "facade" }],
    ["123456 vik", "123456", "vik", { name: "vik" }],
    ["No. 5 0.5 plum", "5", "0.5 plum", { name: "0.5 plum" }],
    ["warm grey 3", "3", "warm grey", { name: "warm grey", hex: "#978a84" }],
  ])("%s", (line, code, name, colour) => {
    const [read] = readColourSet(line);
    expect([read?.code, read?.name]).toEqual([code, name]);
    expect(read?.colour).toEqual(colour && name && !("name" in colour) ? { name, ...colour } : colour);
  });

  it("tells a colour that is only brought to mind from a given one", () => {
    const [given, guessed] = readColourSet("1 moss #6b7d3a\n2 warm grey");
    expect([given, guessed].map((one) => isGuessedColour(one?.colour))).toEqual([false, true]);
  });

  it("gives one for each line that says something, and drops no letter or figure of it", () => {
    const word = fc.constantFrom(
      "moss",
      "sea",
      "12",
      "B-7",
      "#6b7d3a",
      "warm",
      "grey",
      "6b7d3a",
      "rgb(1, 2, 3)",
    );
    const line = fc
      .tuple(fc.array(word, { minLength: 1, maxLength: 4 }), fc.constantFrom(" ", "\t", ", ", "; "))
      .map(([words, parting]) => words.join(parting));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 5 }), (lines) => {
        const read = readColourSet(lines.join("\n"));
        expect(read.map(({ text }) => text)).toEqual(lines);
        for (const { text, code, name, colour } of read) {
          const figures = colour?.from === "typed" ? (text.match(/#?[0-9a-f]{6}|rgb\([^)]*\)/gi) ?? []) : [];
          const letters = (all: string) => [...all.matchAll(/[\p{L}\p{N}]/gu)].length;
          const kept = letters(`${code ?? ""}${name ?? ""}${figures[0] ?? ""}`);
          expect(kept).toBe(letters(text));
        }
      }),
    );
  });
});
