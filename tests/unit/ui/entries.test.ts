import { describe, expect, it } from "vitest";
import { type Entry, entriesOf } from "../../../src/ui/app/entries.ts";
import { findEntries, shownOf } from "../../../src/ui/app/find-entries.ts";

// No outside source: the order of what is found is our own. Names are invented.
const entries = entriesOf({
  kits: [
    {
      id: "k1",
      title: "Low light, ebb tide",
      maker: "Skarvholm Parcel",
      lines: [{ id: "l1", supply: { name: "Peat pencil" } }],
    },
  ],
  remakes: [{ id: "r1", kit: "k1", started: "2026-05-02" }],
  stash: [
    { id: "s1", supply: { name: "Gouache, ljus grön" } },
    { id: "s2", supply: { name: "Light ochre" } },
  ],
});
const found = (text: string) => findEntries(entries, text).map((entry) => entry.key);

it("puts names that begin with the text first, then words that do", () => {
  expect(found("light")).toEqual(["stash s2", "kit k1", "remake r1"]);
});

it("finds every word in any order, without case and accents", () => {
  expect(found("GRON gouache")).toEqual(["stash s1"]);
});

it("finds a kit by its maker", () => {
  expect(found("skarv")).toEqual(["kit k1"]);
});

it("finds what a kit held by its own name, and says which kit", () => {
  expect(found("peat")).toEqual(["line k1 l1"]);
  expect(entries.find(({ key }) => key === "line k1 l1")?.beside).toBe("Low light, ebb tide");
  expect(found("ebb tide")).toEqual(["kit k1", "remake r1"]);
});

it("finds nothing for what is nowhere", () => {
  expect(found("zinc")).toEqual([]);
});

it("finds an act by other words for it, after what is called so", () => {
  const run = () => undefined;
  const acts = [
    { key: "save", kind: "act", name: "Save a copy", also: "back up now", run },
    { key: "back", kind: "place", name: "Back room", run },
  ] as const;
  expect(findEntries(acts, "back").map(({ key }) => key)).toEqual(["back", "save"]);
  expect(findEntries(acts, "back up").map(({ key }) => key)).toEqual(["save"]);
});

describe("what is shown of much that is found", () => {
  const many = (kind: Entry["kind"], count: number): readonly Entry[] =>
    Array.from({ length: count }, (_, index) => ({
      key: `${kind} ${index}`,
      kind,
      name: `Light ${index}`,
      run: () => undefined,
    }));
  const shown = (entries: readonly Entry[]) =>
    shownOf(entries, "light").map(({ key, name }) => `${key}: ${name}`);

  it("is all of it, up to twelve", () => {
    expect(shown(many("stash", 12))).toHaveLength(12);
  });
  it("ends with how many more there are of each kind that has a place to see them", () => {
    const all = shown([...many("kit", 13), ...many("act", 2), ...many("stash", 24)]);
    expect(all).toHaveLength(14);
    expect(all.slice(12)).toEqual(["more kit: and 1 more", "more stash: and 24 more"]);
  });
});
