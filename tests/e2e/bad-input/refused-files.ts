import { readFileSync } from "node:fs";
import { samplePath } from "../../unit/sample.ts";

/** A file that has to be refused, and where its faults are. */
export type BadFile = Readonly<{ name: string; bytes: Buffer; places: readonly string[] }>;

/** The sample with some of its values replaced; each value at its place, as the app writes places. */
function spoilt(values: Readonly<Record<string, unknown>>): Buffer {
  const document: unknown = JSON.parse(readFileSync(samplePath, "utf8"));
  for (const [place, value] of Object.entries(values)) {
    const steps = place.split(/[.[\]]+/).filter((step) => step !== "");
    const field = steps.pop() ?? "";
    const inner = steps.reduce<unknown>((at, step) => Reflect.get(Object(at), step), document);
    Reflect.set(Object(inner), field, value);
  }
  return Buffer.from(JSON.stringify(document));
}

const oneEach: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "a word for a number": { "stash[0].owned": "one" },
  "a number for a word": { "kits[0].maker": 7 },
  "a list for a record": { "stash[3].supply": [] },
  "a price below nought": { "kits[0].lines[0].evidence[0].price.amount": "-4.90" },
  "a price as a number": { "kits[0].tiers[0].price.amount": 24 },
  "a currency nobody has": { "kits[0].tiers[0].price.currency": "XQZ" },
  "a payment for no kits": { "kits[0].tiers[0].kits": 0 },
  "a day that no calendar has": { "kits[0].loggedOn": "2026-02-30" },
  "a word outside its list": { "stash[0].state": "lost" },
  "the same id twice": { "stash[1].id": "st-001" },
  "an id of nothing": { "remakes[0].kit": "kit-of-nobody" },
  "an id with a slash": { "requests[0].id": "rq/1" },
};

const all = Object.assign({}, ...Object.values(oneEach)) as Readonly<Record<string, unknown>>; // merged, not typed by the library

/** What bad input is, by the contract of the format: workbook.md, "What bad input gets". */
export const badFiles: readonly BadFile[] = [
  ...Object.entries(oneEach).map(([name, values]) => ({
    name,
    bytes: spoilt(values),
    places: Object.keys(values),
  })),
  { name: "all of these", bytes: spoilt(all), places: Object.keys(all) },
  { name: "a newer version", bytes: spoilt({ version: 2 }), places: ["version"] },
  { name: "another format", bytes: spoilt({ format: "something-else" }), places: ["format"] },
  { name: "half a file", bytes: spoilt({}).subarray(0, 70_000), places: ["file"] },
  { name: "a picture", bytes: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe]), places: ["file"] },
  { name: "nothing", bytes: Buffer.alloc(0), places: ["file"] },
  { name: "brackets without end", bytes: Buffer.from("[".repeat(100_000)), places: ["file"] },
];
