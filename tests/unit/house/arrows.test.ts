import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, it } from "vitest";

/** Which folders each folder may import; inside itself everything may. The order is the order of the house. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  "engine/record": [],
  "engine/money": ["engine/record"],
  "engine/colour": ["engine/record"],
  "engine/supply": ["engine/record", "engine/money", "engine/colour"],
  "engine/match": ["engine/record", "engine/money", "engine/colour", "engine/supply"],
  "engine/price": ["engine/record", "engine/money", "engine/colour", "engine/supply"],
  "engine/worth": ["engine/record", "engine/money", "engine/supply", "engine/price"],
  "engine/intake": ["engine/record", "engine/money", "engine/colour", "engine/supply"],
  "engine/workbook": [
    "engine/record",
    "engine/money",
    "engine/colour",
    "engine/supply",
    "engine/match",
    "engine/price",
    "engine/worth",
  ],
  "engine/writeup": ["engine"],
  store: ["engine"],
  workers: ["engine"],
  cli: ["engine"],
  ui: ["engine", "store", "workers"],
  "main.tsx": ["engine", "store", "workers", "ui"],
};
const packages: Readonly<Record<string, readonly RegExp[]>> = {
  engine: [/^decimal\.js$/, /^zod\/mini$/],
  store: [/^dexie$/, /^zustand(\/vanilla)?$/, /^zod\/mini$/],
  workers: [/^comlink$/, /^papaparse$/, /^@e965\/xlsx\/dist\/xlsx\.mini\.min\.js$/],
  cli: [/^node:/],
  ui: [/^react(-dom)?(\/.*)?$/, /^zustand(\/.*)?$/, /^@fontsource-variable\//],
  "main.tsx": [/^react(-dom)?(\/.*)?$/],
};

const house = "src";
const files = readdirSync(house, { recursive: true, encoding: "utf8" }).filter(
  (path) => /\.tsx?$/.test(path) && !path.endsWith(".d.ts") && !path.startsWith("tools"),
);

const folderOf = (path: string): string => {
  const [first = "", second = ""] = path.split("/");
  return first === "engine" ? `${first}/${second}` : first;
};

const importLine = /^(?:import|export)\s(?:[^"';]*?\sfrom\s+)?"([^"]+)"|\bimport\(\s*"([^"]+)"/gm;
const importsOf = (path: string): readonly string[] =>
  [...readFileSync(join(house, path), "utf8").matchAll(importLine)].map(
    (match) => match[1] ?? match[2] ?? "",
  );

const isUnder = (folder: string, parents: readonly string[]) =>
  parents.some((parent) => folder === parent || folder.startsWith(`${parent}/`));

/** Every import that goes against the arrows, as "file → what it must not import". */
function violations(path: string, imports: readonly string[]): readonly string[] {
  const folder = folderOf(path);
  const top = folder.split("/")[0] ?? "";
  return imports.flatMap((specifier) => {
    if (!specifier.startsWith(".")) {
      return (packages[top] ?? []).some((known) => known.test(specifier)) ? [] : [`${path} → ${specifier}`];
    }
    const target = relative("/", join("/", dirname(path), specifier));
    const targetFolder = folderOf(target);
    if (targetFolder === folder) return [];
    if (!isUnder(targetFolder, allowed[folder] ?? [])) return [`${path} → ${target}`];
    const isDoor = !targetFolder.startsWith("engine/") || target === `${targetFolder}/index.ts`;
    return isDoor ? [] : [`${path} → ${target} (not through index.ts)`];
  });
}

describe("the arrows of the house", () => {
  it("knows every folder", () => {
    expect([...new Set(files.map(folderOf))].filter((folder) => !Object.hasOwn(allowed, folder))).toEqual([]);
  });
  it("sees the files", () => expect(files.length).toBeGreaterThan(40));
  it("no import goes against them", () => {
    expect(files.flatMap((path) => violations(path, importsOf(path)))).toEqual([]);
  });
  it.each([
    ["engine/money/x.ts", "../colour/index.ts"],
    ["engine/price/x.ts", "../worth/index.ts"],
    ["engine/match/x.ts", "../../store/index.ts"],
    ["engine/match/x.ts", "react"],
    ["engine/worth/x.ts", "../price/schema.ts"],
    ["store/x.ts", "../ui/index.ts"],
    ["cli/x.ts", "../store/index.ts"],
  ])("would catch %s importing %s", (path, specifier) =>
    expect(violations(path, [specifier])).toHaveLength(1),
  );
});

/** No clock and no chance inside the engine: `today`, ids and seeds come in as arguments. */
it("the engine asks no clock and throws no dice", () => {
  const asks = files
    .filter((path) => path.startsWith("engine/"))
    .filter((path) =>
      /new Date\(\)|Date\.now|Math\.random|crypto\.|performance\.now/.test(
        readFileSync(join(house, path), "utf8"),
      ),
    );
  expect(asks).toEqual([]);
});

/** A page waits for the words of its language before anything of it runs: they must not wait for the page. */
it("the words of a language import nothing but each other and types", () => {
  const words = files.filter((path) => /^ui\/words\/(en|sv)\/|^store\/words\/(en|sv)\.ts/.test(path));
  expect(words.length).toBeGreaterThan(20);
  const others = words.flatMap((path) =>
    [
      ...readFileSync(join(house, path), "utf8").matchAll(
        /^(?:import|export)\s(?!type\s)[^;]*?from\s+"([^"]+)"/gm,
      ),
    ]
      .filter(([, specifier = ""]) => !/^\.\/[\w-]+\.ts$/.test(specifier))
      .map(([line]) => `${path}: ${line}`),
  );
  expect(others).toEqual([]);
});
