import { expect, it } from "vitest";
import { canonicalJson, readWorkbook, writeWorkbook } from "../../src/engine/workbook/index.ts";
import fc from "../chance.ts";
import { sampleBook } from "../unit/sample.ts";
import { smallWorkbook } from "../unit/workbook/small.ts";

// Own keys, "__proto__" among them, as JSON.parse makes them: an object literal would set the prototype.
const json = fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.parse(JSON.stringify(value)));
const extraKey = fc
  .oneof(fc.string({ minLength: 1 }), fc.constantFrom("__proto__", "constructor", "toString"))
  .map((key) => `x-${key}`);
const places = [
  "",
  "markets.0",
  "rates.0",
  "shops.0",
  "stash.0",
  "stash.0.supply",
  "stash.0.supply.traits",
  "kits.0",
  "kits.0.lines.0",
  "kits.0.lines.0.evidence.0",
  "remakes.0",
];

function withExtra(place: string, key: string, value: unknown): string {
  const book: unknown = smallWorkbook();
  const holder =
    place === ""
      ? book
      : place.split(".").reduce<unknown>((inner, step) => Reflect.get(Object(inner), step), book);
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
  return JSON.stringify(book);
}

it("whatever a later version adds anywhere survives reading and writing, in its place and order", () => {
  fc.assert(
    fc.property(fc.constantFrom(...places), extraKey, json, (place, key, value) => {
      const text = withExtra(place, key, value);
      const reading = readWorkbook(text);
      expect(reading).toMatchObject({ ok: true });
      if (reading.ok) expect(JSON.stringify(JSON.parse(writeWorkbook(reading.workbook)))).toBe(text);
    }),
  );
});

it("the sample comes back byte for byte the same after two rounds", () => {
  const once = writeWorkbook(sampleBook());
  const reading = readWorkbook(once);
  expect(reading.ok && writeWorkbook(reading.workbook)).toBe(once);
});

it("canonical JSON does not mind key order, nor null against left out, and minds all else", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), json), (record) => {
      const turned = Object.fromEntries(Object.entries(record).toReversed());
      expect(canonicalJson(turned)).toBe(canonicalJson(record));
      expect(canonicalJson({ ...record, "left out": null })).toBe(canonicalJson(record));
      expect(canonicalJson({ ...record, added: 1 })).not.toBe(canonicalJson({ ...record, added: 2 }));
    }),
  );
});

it("any text at all is a workbook or a list of faults, never a crash", () => {
  const anyText = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.json(),
    fc.json().map((text) => `{"format":"understudy-workbook","version":1,"stash":${text},"kits":${text}}`),
  );
  fc.assert(
    fc.property(anyText, (text) => {
      const reading = readWorkbook(text);
      if (!reading.ok) expect(reading.faults.length).toBeGreaterThan(0);
      if (!reading.ok)
        expect(
          reading.faults.every(
            ({ place, problem, remedy }) => place !== "" && problem !== "" && remedy !== "",
          ),
        ).toBe(true);
    }),
    { numRuns: 500 },
  );
});
