import { afterEach, beforeEach, expect, it, vi } from "vitest";
import type { Mapping } from "../../../src/engine/intake/index.ts";
import { keepReading, keptReading } from "../../../src/store/readings.ts";

const kept = new Map<string, string>();
const mapping: Mapping = { head: 0, columns: ["name", null, "paid"], currency: "SEK", family: "marker" };

beforeEach(() => {
  kept.clear();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  });
});
afterEach(() => vi.unstubAllGlobals());

it("a list is read as one with the same heads was read last, wherever its heads stand", () => {
  expect(keptReading("a")).toBeNull();
  keepReading("a", mapping);
  keepReading("a", { ...mapping, currency: "EUR" });
  expect(keptReading("a")).toEqual({ columns: ["name", null, "paid"], currency: "EUR", family: "marker" });
  expect(keptReading("b")).toBeNull();
});

it("the last forty kinds of list are kept", () => {
  for (let at = 0; at < 45; at += 1) keepReading(`list ${at}`, mapping);
  expect(keptReading("list 4")).toBeNull();
  expect(keptReading("list 5")).not.toBeNull();
});

it.each(["{", '"x"', '[["a",{"columns":["__proto__"],"currency":"SEK","family":null}]]', "[[1,2]]"])(
  "what somebody else wrote there (%s) is nothing kept",
  (text) => {
    kept.set("understudy.readings", text);
    expect(keptReading("a")).toBeNull();
    keepReading("a", mapping);
    expect(keptReading("a")).not.toBeNull();
  },
);

it("where storage is shut off nothing is kept, and nothing breaks", () => {
  vi.stubGlobal("localStorage", {
    getItem: () => {
      throw new Error("shut off");
    },
    setItem: () => {
      throw new Error("shut off");
    },
  });
  keepReading("a", mapping);
  expect(keptReading("a")).toBeNull();
});
