import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { chartFaultsIn } from "../../../src/engine/colour/chart/words/index.ts";
import { wordsIn as colourWords } from "../../../src/engine/colour/words/index.ts";
import { wordsIn as matchWords } from "../../../src/engine/match/words/index.ts";
import { wordsIn as priceWords } from "../../../src/engine/price/words/index.ts";
import { families, traitsByFamily, valueWord } from "../../../src/engine/supply/index.ts";
import { wordsIn as supplyWords } from "../../../src/engine/supply/words/index.ts";
import * as colour from "../../../src/ui/words/engine/colour.ts";
import * as match from "../../../src/ui/words/engine/match.ts";
import * as price from "../../../src/ui/words/engine/price.ts";
import * as supply from "../../../src/ui/words/engine/supply.ts";
import * as worth from "../../../src/ui/words/engine/worth.ts";

/** What a text function is asked with here, where plain letters will not do. */
const samples: Readonly<Record<string, readonly unknown[]>> = {
  date: ["2026", "05", 7],
  rate: ["EUR", ["11 SEK"], "7/5"],
  source: ["4 EUR", "7/5", "25 %", "1"],
  part: ["1", "2", "sheets"],
  and: [["a", "b"]],
  tips: [["a", "b"]],
  paper: ["marker"],
  sheets: [2],
  softer: [1],
  harder: [2],
  cutDown: [3],
  cut: ["A", 2, ["B", "C"]],
  fitted: ["A", "B", 4, "C"],
};

type Text = Readonly<{ path: string; said: string }>;

/** Every text in a set of words, with where it stands; a text that is put together is put together of samples. */
function textsIn(words: unknown, path = ""): readonly Text[] {
  if (typeof words === "string") return [{ path, said: words }];
  if (typeof words === "function") {
    const name = path.split(".").at(-1) ?? "";
    return textsIn(words(...(samples[name] ?? ["A", "B", "C", "D", "E"])), path);
  }
  return Object.entries(words as object).flatMap(([key, inner]) =>
    textsIn(inner, path ? `${path}.${key}` : key),
  );
}

/** What is the same word in both languages, or only puts its parts one after the other. */
const sameWord = /^(?:hues\.orange|traits\.form|binder|tip|surface|amounts\.plain)$/;

describe.each([
  ["colour", colourWords],
  ["chart", chartFaultsIn],
  ["supply", { en: { ...supplyWords.en, values: {} }, sv: { ...supplyWords.sv, values: {} } }],
  ["match", matchWords],
  ["price", priceWords],
])("the words of %s", (_, { en, sv }) => {
  const [english, swedish] = [textsIn(en), textsIn(sv)];
  const same = english
    .filter(({ path, said }) => swedish.some((other) => other.path === path && other.said === said))
    .map(({ path }) => path);

  it("are all there in Swedish", () => {
    const paths = new Set(swedish.map(({ path }) => path));
    expect(english.filter(({ path }) => !paths.has(path))).toEqual([]);
    expect(swedish.filter(({ path, said }) => said === "" && path !== "amounts.plain")).toEqual([]);
  });
  it("are Swedish, and not English by accident", () => {
    expect(same.filter((path) => !sameWord.test(path))).toEqual([]);
  });
});

/** Every word that a trait may have, read off the schemas. */
const values = families.flatMap((family) =>
  Object.entries(traitsByFamily[family]).flatMap(([trait, schema]) => {
    const words = [...JSON.stringify(schema).matchAll(/"entries":(\{[^}]*\})/g)];
    return words.flatMap(([, entries]) =>
      Object.keys(JSON.parse(entries ?? "{}")).map((value) => ({ family, trait, value })),
    );
  }),
);

describe("the value of a trait", () => {
  // Trade words that Swedish took as they are, and the grades and ratings that are nobody's language.
  const international = ["pigment", "gel", "gouache", "tempera", "layout", "bristol", "flat", "filbert"];
  it("is read off the schemas", () => expect(values.length).toBeGreaterThan(100));
  it("has its Swedish word, if it is a word", () => {
    const unsaid = values
      .filter(({ trait }) => trait !== "grade")
      .filter(({ family, trait, value }) => valueWord(family, trait, value, "sv") === value)
      .map(({ value }) => value);
    expect(unsaid.filter((value) => !international.includes(value))).toEqual([]);
  });
});

describe("screens", () => {
  const house = "src/ui";
  const bound = { ...colour, ...match, ...price, ...supply, ...worth };
  const files = readdirSync(house, { recursive: true, encoding: "utf8" }).filter((path) =>
    /\.tsx?$/.test(path),
  );
  const imports = /^import\s+(?:type\s+)?\{([^}]*)\}\s+from\s+"[^"]*\/engine\/[a-z]+\/index\.ts"/gm;
  const takenPast = (text: string) =>
    [...text.matchAll(imports)]
      .flatMap(([, names = ""]) => names.split(",").map((name) => name.trim().split(" ")[0] ?? ""))
      .filter((name) => Object.hasOwn(bound, name));

  it("ask the engine for words in one place, which knows the page's language", () => {
    const past = files.flatMap((path) =>
      takenPast(readFileSync(join(house, path), "utf8")).map((name) => `${path}: ${name}`),
    );
    expect(past).toEqual([]);
  });
  it("would be caught", () => {
    expect(takenPast('import { labOf, plainName } from "../../engine/colour/index.ts";')).toEqual([
      "plainName",
    ]);
  });
});
