import { describe, expect, it } from "vitest";
import written from "../../fixtures/written-lines.json" with { type: "json" };
import { hexOfWord, readLine, readLines, SupplySchema } from "../../src/engine/supply/index.ts";
import fc from "../chance.ts";

// The lines are invented, and their right readings were written for them: common practice, no source. Sheet sizes
// follow ISO 216, inches are 25.4 mm, colours of CSS names are those of CSS Color 4, section 6.1.
describe("readLine reads what people write", () => {
  it("has at least sixty lines to read", () => {
    expect(written.length).toBeGreaterThanOrEqual(60);
    expect(new Set(written.map((row) => row.supply.family)).size).toBe(12);
  });

  it.each(written)("$line", ({ line, qty, supply, pieces, leftover, notSaid }) => {
    const reading = readLine(line);
    expect(reading.qty).toBe(qty);
    expect(reading.supply).toEqual(supply);
    expect(reading.pieces.map(({ text, field, reads }) => [text, field, reads])).toEqual(pieces);
    expect(reading.leftover).toEqual(leftover);
    expect(reading.notSaid).toEqual(notSaid);
  });
});

describe("readLine", () => {
  it("says where each piece stands", () => {
    const line = "block, 24 x 32 cm, 12 sheets, 300 gsm, medium";
    const places = readLine(line).pieces.map(({ start, end, reads }) => [line.slice(start, end), reads]);
    expect(places).toEqual([
      ["block", "paper, a block"],
      ["24 x 32 cm", "240 × 320 mm"],
      ["12 sheets", "12 sheets"],
      ["300 gsm", "300 g/m²"],
      ["medium", "surface: medium"],
    ]);
  });

  it("leaves open what was not said", () => {
    expect(readLine("block, 24 x 32 cm, 12 sheets, 300 gsm, medium").notSaid).toEqual([
      "use",
      "coating",
      "acid-free",
    ]);
  });

  it("takes makers and lines that the caller knows, the longer name first", () => {
    const known = { makers: ["Kvitlyng", "Kvitlyng North"], lines: ["Strand gouache"] };
    const { supply, leftover } = readLine("2 Kvitlyng North Strand gouache, moss, 15 ml", known);
    expect(supply).toMatchObject({
      maker: "Kvitlyng North",
      line: "Strand gouache",
      colour: { name: "moss" },
    });
    expect(leftover).toEqual([]);
  });

  it("reads no unit into a size that has none", () => {
    const { supply, leftover } = readLine("block 24x32, 300 gsm");
    expect(supply.traits).toEqual({ bound: "block", gsm: 300 });
    expect(leftover).toEqual(["24x32"]);
  });

  it("gives no hex to a colour word that nobody agreed on", () => {
    expect(readLine("gouache fog blue").supply.colour).toEqual({ name: "fog blue" });
    expect(readLine("gouache blue").supply.colour).toEqual({ name: "blue", hex: "#0000ff" });
  });

  it("reads an empty line as nothing", () => {
    expect(readLine("  ")).toEqual({
      qty: 1,
      supply: { family: "other", name: "" },
      price: null,
      pieces: [],
      notSaid: [],
      leftover: [],
    });
  });

  it("leaves a whole text unread, and whole", () => {
    const text = `gouache ${"and more of the same ".repeat(2000)}`;
    const { supply, leftover } = readLine(text);
    expect(supply.family).toBe("other");
    expect(leftover).toEqual([text.trim()]);
  });

  it("treats names of object parts as plain words", () => {
    for (const word of ["__proto__", "constructor", "toString"])
      expect(readLine(`${word} brush`).supply).toEqual({ family: "brush", name: `Brush, ${word}` });
  });
});

// CSS Color 4, section 6.1, spot checks; the survey words stand beside them.
it.each([
  ["rebeccapurple", "#663399"],
  ["Dark Sea Green", "#8fbc8f"],
  ["dark-gray", "#a9a9a9"],
  ["yellow", "#ffff00"],
  ["yellowgreen", "#9acd32"],
  ["aliceblue", "#f0f8ff"],
])("%s is %s", (word, hex) => {
  expect(hexOfWord(word)).toBe(hex);
});

describe("readLines", () => {
  it("takes a pasted list apart and leaves bullets, boxes and numbers behind", () => {
    const list =
      "• 2 gouache tubes moss 15 ml\r\n- [ ] 4B pencil\n\n3. flat brush 10 mm; kneaded eraser\n12) 0.3 mm liner";
    expect(readLines(list).map(({ text, qty, supply }) => [text, qty, supply.family])).toEqual([
      ["2 gouache tubes moss 15 ml", 2, "paint"],
      ["4B pencil", 1, "graphite"],
      ["flat brush 10 mm", 1, "brush"],
      ["kneaded eraser", 1, "eraser"],
      ["0.3 mm liner", 1, "liner"],
    ]);
  });

  it("finds nothing in nothing", () => {
    expect(readLines(" \n ; \n•\n")).toEqual([]);
  });
});

const words = written.flatMap(({ line }) => line.split(" "));
const anyLine = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 60 }),
  fc.array(fc.constantFrom(...words), { maxLength: 12 }).map((some) => some.join(" ")),
);
const folded = (text: string) => text.toLowerCase().replaceAll("ς", "σ").replace(/\s+/g, "");

it.each([
  ["frobnicator", "Frobnicator"],
  ["østfold", "Østfold"],
  ["ßa", "ßa"], // its capital is two letters
  ["\u1c80a", "\u1c80a"], // a round ve: its capital is another letter's
  ["µa", "µa"],
])("%s is called %s, and keeps its letters", (line, name) => {
  expect(readLine(line).supply.name).toBe(name);
});

describe("whatever is written", () => {
  it("gives a supply that the workbook takes, and a whole number of them", () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const { qty, supply } = readLine(line);
        expect(SupplySchema.safeParse(supply).success).toBe(true);
        expect(Number.isInteger(qty) && qty >= 1).toBe(true);
      }),
    );
  });

  it("drops nothing: a letter or digit is in a piece, in what is left over, or in a joining word", () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const { pieces, leftover, supply } = readLine(line);
        const kept = folded([...pieces.map((piece) => piece.text), ...leftover].join(""));
        const joiners = /^(a|an|the|of|in|on|with|and|for|per|each|at|plus|tips?|und|och)$/i;
        // A circled number lists the line, as a bullet does.
        for (const word of line.split(/[^\p{L}\p{Nd}]+/u).filter((text) => text && !joiners.test(text)))
          expect(kept).toContain(folded(word));
        for (const text of leftover) expect(folded(supply.name)).toContain(folded(text));
      }),
    );
  });

  it("keeps pieces apart, in order, and true to the line", () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const { pieces } = readLine(line);
        for (const [index, piece] of pieces.entries()) {
          expect(line.slice(piece.start, piece.end)).toBe(piece.text);
          expect(piece.start).toBeGreaterThanOrEqual(pieces[index - 1]?.end ?? 0);
        }
      }),
    );
  });
});
