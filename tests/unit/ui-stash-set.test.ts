import { expect, it } from "vitest";
import { readColourSet } from "../../src/engine/intake/index.ts";
import type { StashItem, Supply } from "../../src/engine/supply/index.ts";
import { setRows } from "../../src/ui/stash/set/view/rows.ts";
import { setWords as words } from "../../src/ui/words/set.ts";

// No outside source: what is added of a set is the project's own rule.

const base: Supply = { family: "paint", name: "Gouache", maker: "Kvist", line: "Ström", traits: { ml: 15 } };
const item = (supply: Supply): StashItem => ({ id: "st", supply });

it("makes a thing of each colour, with what they all are", () => {
  const [moss, grey] = setRows(base, readColourSet("12 moss #6b7d3a\nwarm grey\n"), []);
  expect(moss).toEqual({
    place: 0,
    supply: {
      ...base,
      name: "Gouache, moss",
      code: "12",
      colour: { name: "moss", hex: "#6b7d3a", from: "typed" },
    },
    facts: "no. 12",
    not: null,
  });
  expect(grey?.facts).toBe(`${words.noNumber}, ${words.guessed}`);
});

it("adds nothing that is here already, by its number or by its name, and nothing twice", () => {
  const stash = [
    item({ ...base, name: "Called otherwise", code: "12" }),
    item({ ...base, name: "gouache, PLUM", colour: { name: "plum" } }),
  ];
  const rows = setRows(base, readColourSet("12 moss\nplum\n13 sand\n13 sand"), stash);
  expect(rows.map(({ not }) => not)).toEqual([words.here, words.here, null, words.twice]);
});

it("compares a long set with a long stash at once", () => {
  const stash = Array.from({ length: 10_000 }, (_, at) =>
    item({ ...base, name: `Gouache, c${at}`, code: `C${at}` }),
  );
  const list = Array.from({ length: 500 }, (_, at) => `C${at * 30} c${at * 30}`).join("\n");
  expect(setRows(base, readColourSet(list), stash).filter(({ not }) => not === words.here)).toHaveLength(334);
});
