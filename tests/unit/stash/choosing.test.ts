import { beforeEach, describe, expect, it } from "vitest";
import {
  besideIt,
  choose,
  chooseAll,
  chooseNone,
  endChoosing,
  gathered,
  setListed,
  setSeen,
  standAt,
  startChoosing,
  stretchTo,
  useChoosing,
} from "../../../src/ui/stash/choosing.ts";
import { anything } from "../../../src/ui/stash/view/asked.ts";
import { findIn } from "../../../src/ui/stash/view/find.ts";
import { knownStash } from "../../../src/ui/stash/view/known.ts";
import { sampleBook } from "../sample.ts";

const ids = () => [...useChoosing.getState().ids];

beforeEach(() => {
  endChoosing();
  setSeen(["a", "b", "c", "d", "e"]);
  startChoosing();
});

describe("choosing several", () => {
  it("takes one, gives it up, and takes all between with Shift", () => {
    choose("b");
    choose("d", true);
    expect(ids()).toEqual(["b", "c", "d"]);
    choose("c");
    expect(ids()).toEqual(["b", "d"]);
    chooseNone();
    choose("e", true); // with nothing to start from it is one
    expect(ids()).toEqual(["e"]);
  });

  it("goes along by arrows, and stops at the ends", () => {
    expect([besideIt("a", -1), besideIt("a", 1), besideIt("e", 1), besideIt("x", 1)]).toEqual([
      null,
      "b",
      null,
      null,
    ]);
    stretchTo("b", "c");
    stretchTo("c", "d");
    expect(ids()).toEqual(["b", "c", "d"]);
  });

  it("has one stop for the Tab key, as long as it is in sight", () => {
    standAt("c");
    setSeen(["c", "e"]);
    expect(useChoosing.getState().at).toBe("c");
    setSeen(["e"]);
    expect(useChoosing.getState().at).toBeNull();
  });

  it("ends with nothing chosen", () => {
    chooseAll(new Set(["a", "b"]));
    endChoosing();
    expect([useChoosing.getState().on, ids()]).toEqual([false, []]);
  });
});

it("what was found and what is chosen can be had whole, in their order", () => {
  const stash = knownStash(sampleBook().stash ?? []);
  const found = findIn(stash, { ...anything, kind: "marker" });
  setListed({ stash, found, order: "name" });
  chooseAll(new Set(["st-005", "st-001"]));
  const { found: all, chosen } = gathered();
  expect(all.map(({ id }) => id).toSorted()).toEqual([...found.ids].toSorted());
  expect(all.map(({ supply }) => supply.name)).toEqual(
    all.map(({ supply }) => supply.name).toSorted(new Intl.Collator(undefined, { numeric: true }).compare),
  );
  expect(chosen.map(({ id }) => id)).toEqual(["st-001", "st-005"]);
  setListed(null);
  expect(gathered().found).toEqual([]);
});
