import { beforeEach, describe, expect, it } from "vitest";
import {
  besideIt,
  choose,
  chooseAll,
  chooseNone,
  endChoosing,
  setSeen,
  standAt,
  startChoosing,
  stretchTo,
  useChoosing,
} from "../../../src/ui/stash/choosing.ts";

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
