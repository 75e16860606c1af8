import { readFileSync } from "node:fs";
import Ajv from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { jsonSchema } from "../../../src/engine/workbook/index.ts";
import { smallWorkbook } from "./small.ts";

const published = readFileSync("docs/workbook.schema.json", "utf8");

it("docs/workbook.schema.json is what the schemas say (npm run schema writes it)", () => {
  expect(JSON.parse(published)).toEqual(JSON.parse(JSON.stringify(jsonSchema())));
});

// Source: JSON Schema 2020-12, judged by the independent npm library ajv.
describe("an independent validator agrees", () => {
  const validate = new Ajv({ strict: false, formats: { date: /^\d{4}-\d{2}-\d{2}$/ } }).compile(
    JSON.parse(published),
  );
  it("accepts the small workbook", () => expect(validate(smallWorkbook())).toBe(true));
  it("accepts null for left out", () =>
    expect(validate({ ...smallWorkbook(), kits: null, home: null })).toBe(true));
  it.each([
    ["a wrong word", { stash: [{ id: "a", supply: { family: "glue", name: "x" } }] }],
    ["a wrong type", { stash: [{ id: "a", supply: { family: "paint", name: 5 } }] }],
    [
      "a negative amount",
      {
        stash: [{ id: "a", supply: { family: "other", name: "x" }, paid: { amount: "-1", currency: "EUR" } }],
      },
    ],
    [
      "a tier of no kits",
      {
        kits: [
          {
            id: "k",
            maker: "m",
            period: "2026-01",
            tiers: [{ id: "t", kits: 0, price: { amount: "1", currency: "EUR" } }],
          },
        ],
      },
    ],
  ])("refuses %s", (_, change) => expect(validate({ ...smallWorkbook(), ...change })).toBe(false));
});
