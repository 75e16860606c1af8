import { describe, expect, it } from "vitest";
import {
  type Candidate,
  cutSentence,
  familyLabel,
  matchKit,
  reasonLine,
  traitLabel,
  verdictWords,
} from "../../../src/engine/match/index.ts";
import type { Kinship, StashItem, Supply } from "../../../src/engine/supply/index.ts";

/** The one candidate of a stash of one. */
function candidateOf(kit: Supply, item: StashItem, kinships: readonly Kinship[] = []): Candidate {
  const found = matchKit({ kit: { id: "k", lines: [{ id: "l", supply: kit }] }, stash: [item], kinships });
  const [candidate] = found.lines[0]?.candidates ?? [];
  if (!candidate) throw new Error("the item is not listed");
  return candidate;
}

function reason(kit: Supply, stash: Supply, kinships: readonly Kinship[] = []): string {
  const item = { id: "a", supply: stash };
  return reasonLine(kit, item, candidateOf(kit, item, kinships), "sv");
}

const gouache = (name: string, hex: string | null, more: object = {}): Supply => ({
  family: "paint",
  name,
  ...(hex ? { colour: { hex } } : {}),
  traits: { medium: "gouache", ...more },
});
const pencil = (grade: "2H" | "HB" | "2B" | "4B"): Supply => ({
  family: "graphite",
  name: `Penna ${grade}`,
  traits: { core: "graphite", grade },
});
const pad = (size: string, more: object = {}): Supply => ({
  family: "paper",
  name: `Block ${size}`,
  traits: { size, use: "cartridge", ...more },
});
const known: Kinship = {
  id: "n",
  kind: "twin",
  a: { maker: "Nordtall", code: "1" },
  b: { maker: "Kvitlyng", code: "9" },
};

describe("reasonLine in Swedish", () => {
  it.each([
    [gouache("Moss", "#6b7d3a"), gouache("Lav", "#647637"), "2,8 ifrån, lite mörkare"],
    [gouache("Moss", "#6b7d3a"), gouache("Lav", "#6b7d3a", { form: "pan" }), "Ingen skillnad i färg"],
    [
      gouache("Moss", "#6b7d3a", { form: "tube" }),
      gouache("Lav", "#6b7d3a", { form: "pan" }),
      "Ingen skillnad i färg; skillnad i form",
    ],
    [pencil("HB"), pencil("4B"), "Fyra steg mjukare"],
    [pencil("HB"), pencil("2B"), "Två steg mjukare"],
    [pencil("2B"), pencil("2H"), "Fem steg hårdare"],
    [pad("A4"), pad("A3"), "Större: skärs till, två bitar per ark"],
    [pad("A4"), pad("A5"), "Mindre: täcker 50 av 100"],
    [pad("A4", { gsm: 200 }), pad("A4"), "Ingen uppgift om ytvikt"],
    [pad("A4", { surface: "smooth" }), pad("A4", { surface: "rough" }), "Skillnad i yta"],
    [pad("A4"), { ...pad("A4"), name: "Ark" }, "Allt som är känt stämmer"],
    [
      { family: "tool", name: "Linjal" },
      { family: "tool", name: "Lång linjal" },
      "Inte mycket är känt om den",
    ],
    [
      gouache("Moss", "#6b7d3a"),
      { family: "marker", name: "Lav", colour: { hex: "#647637" } },
      "En märkpenna i stället för målarfärg; 2,8 ifrån, lite mörkare",
    ],
    [gouache("Moss", "#6b7d3a"), gouache("Lav", null), "Allt som är känt stämmer; dess färg är okänd"],
    [gouache("Moss", null), gouache("Lav", "#6b7d3a"), "Allt som är känt stämmer; kitets färg är okänd"],
    [gouache("Moss", "#6b7d3a"), gouache("Moss", "#6b7d3a"), "Precis samma produkt"],
  ] satisfies [Supply, Supply, string][])("%j, %j: %s", (kit, stash, line) =>
    expect(reason(kit, stash)).toBe(line),
  );

  it.each([
    ["twin", "Säljs under ett annat namn"],
    ["same-colour", "Samma färg i en annan form"],
  ] as const)("of a %s", (kind, line) => {
    const kit = { ...gouache("Moss", "#6b7d3a"), maker: "Nordtall", code: "1" };
    const own = { ...gouache("Lav", "#647637"), maker: "Kvitlyng", code: "9" };
    expect(reason(kit, own, [{ ...known, kind }])).toBe(line);
  });
});

describe("cutSentence in Swedish", () => {
  it.each([
    ["A4", "A3", "Skär varje ark till 210 × 297 mm: två bitar per ark, inget blir över."],
    [
      "letter",
      "A3",
      "Skär varje ark till 215,9 × 279,4 mm: en bit per ark, kvar blir 81,1 × 420 mm och 140,6 × 215,9 mm.",
    ],
  ])("%s of %s", (kit, own, sentence) => {
    const { adaptation } = candidateOf(pad(kit), { id: "a", supply: { ...pad(own), name: "Stort" } });
    expect(adaptation && cutSentence(adaptation, "sv")).toBe(sentence);
    expect(adaptation && cutSentence(adaptation)).toBe(adaptation?.sentence);
  });
});

it("labels and verdicts have their Swedish", () => {
  expect(verdictWords("near", "sv")).toBe("mycket nära");
  expect(verdictWords("gap", "sv")).toBe("inget som ligger nära");
  expect(traitLabel("base", "sv")).toBe("bläcksort");
  expect(traitLabel("constructor", "sv")).toBe("constructor");
  expect(familyLabel("eraser", "sv")).toBe("ett suddgummi");
});
