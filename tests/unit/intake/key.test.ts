import { describe, expect, it } from "vitest";
import { fnv1a } from "../../../src/engine/intake/hash.ts";
import { headPrint, rowKeys } from "../../../src/engine/intake/key.ts";

// Source: Fowler, Noll, Vo, Eastlake, "The FNV Non-Cryptographic Hash Algorithm", test vectors of FNV-1a 64.
it.each([
  ["", "cbf29ce484222325"],
  ["a", "af63dc4c8601ec8c"],
  ["b", "af63df4c8601f1a5"],
  ["foobar", "85944171f73967e8"],
])("the hash of %j is %s", (text, hash) => expect(fnv1a(text)).toBe(hash));

/** FNV-1a 64 as the draft writes it, on whole 64-bit numbers and the platform's own UTF-8. */
const plainly = (text: string): string => {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  return hash.toString(16).padStart(16, "0");
};

it.each(["blå lådan", "スケッチ", "🎨", "lone \ud800 half", "x".repeat(5_000)])(
  "hashes the UTF-8 bytes of %j",
  (text) => expect(fnv1a(text)).toBe(plainly(text)),
);

describe("a row's key", () => {
  const key = (...cells: readonly (string | number | null)[]) => rowKeys()(cells);
  it("does not hang on case, spacing, the decimal sign or empty cells at the end", () => {
    expect(key("Moss ", "39,50", null)).toBe(key("moss ", 39.5));
    expect(key("blå  lådan")).toBe(key("Bla\u030a la\u030adan"));
  });
  it("hangs on every cell and its place", () => {
    expect(key("a", "b")).not.toBe(key("b", "a"));
    expect(key("a", null, "b")).not.toBe(key("a", "b"));
    expect(key("ab")).not.toBe(key("a", "b"));
  });
  it("tells equal rows of one list apart by their order", () => {
    const keyOf = rowKeys();
    const [first, second] = [keyOf(["a"]), keyOf(["a"])];
    expect(second).toBe(`${first}-2`);
  });
});

it("lists with the same heads go by one name", () => {
  expect(headPrint(["Brand", "Name"])).toBe(headPrint(["brand", "NAME", null]));
  expect(headPrint(["Brand", "Name"])).not.toBe(headPrint(["Name", "Brand"]));
});
