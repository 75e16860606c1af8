import { describe, expect, it } from "vitest";
import type { Supply } from "../../../src/engine/supply/index.ts";
import { cautionLines, cautions } from "../../../src/engine/writeup/index.ts";

// The cautions themselves are the usual ones of the trade: common practice, no source.
describe("each class of caution has a supply that calls for it", () => {
  it.each([
    ["solvent", { family: "marker", name: "Marker", traits: { base: "alcohol" } }],
    ["aerosol", { family: "other", name: "Fixative spray" }],
    ["dust", { family: "pastel", name: "Soft pastel" }],
    ["blade", { family: "tool", name: "Craft knife", traits: { kind: "knife" } }],
  ] satisfies [string, Supply][])("%s", (id, supply) => {
    const said = cautions.find((caution) => caution.id === id)?.said;
    expect(cautionLines([supply])).toContain(said?.en.line);
    expect(cautionLines([supply]).at(-1)).toContain("local rules come first");
    expect(cautionLines([supply], "sv")).toContain(said?.sv.line);
    expect(cautionLines([supply], "sv").at(-1)).toContain("lokala regler går först");
  });
  it("nothing for a pencil", () => expect(cautionLines([{ family: "graphite", name: "4B" }])).toEqual([]));
  it.each([
    ["blade", "Brytbladskniv"],
    ["aerosol", "Fixativ på sprejburk"],
    ["dust", "Guldpulver"],
  ])("%s is known by a Swedish name: %s", (id, name) => {
    const line = cautions.find((caution) => caution.id === id)?.said.sv.line;
    expect(cautionLines([{ family: "other", name }], "sv")).toContain(line);
  });
  it("repeats what a label says as the label's word", () => {
    expect(cautionLines([{ family: "paint", name: "Cadmium red", safety: "Do not spray." }])[0]).toBe(
      "Cadmium red, its label says: Do not spray.",
    );
  });
});

it("no caution is older than 24 months unlooked at", () => {
  const monthsSince = (date: string) => (Date.now() - Date.parse(date)) / (30.44 * 86_400_000);
  const all = cautions.flatMap(({ said }) => [said.en, said.sv]);
  expect(all.length).toBe(8);
  expect(all.filter(({ checked }) => !(monthsSince(checked) <= 24))).toEqual([]);
  expect(all.filter(({ source }) => source === "")).toEqual([]);
});
