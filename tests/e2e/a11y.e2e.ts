import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { letWritesFail } from "./kept/spies.ts";
import { open, placesOf, plainPlaces } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U1. Source: axe-core 4.13 by way of @axe-core/playwright, its rules for WCAG 2.0 to 2.2, levels A
// and AA, and its best practices.
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** The ways a page is looked at. Only colours differ between some, and then only the rule for them is asked. */
const looks = [
  { name: "1440 light", width: 1440, media: { colorScheme: "light" }, rules: "all" },
  { name: "1440 dark", width: 1440, media: { colorScheme: "dark" }, rules: "colour" },
  { name: "1440 forced colours", width: 1440, media: { forcedColors: "active" }, rules: "colour" },
  { name: "390 light", width: 390, media: { colorScheme: "light" }, rules: "all" },
  { name: "390 dark", width: 390, media: { colorScheme: "dark" }, rules: "colour" },
] as const;

const plainMedia = { colorScheme: "light", forcedColors: "none" } as const;

/** Makes the window as high as the page, so that nothing is under the bar at its foot just by the scrolling. */
async function setWindow(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 1000 });
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(1000, height) });
}

/** What axe finds in one look at the open page: each rule with the elements that break it. */
async function faultsIn(page: Page, rules: "all" | "colour"): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode(); // one frame, so no page is opened to gather results in
  const { violations } = await (rules === "all"
    ? axe.withTags(tags)
    : axe.withRules("color-contrast")
  ).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary}`),
  );
}

/** The faults of the open page in every look; or in a few, where its colours have been looked at elsewhere. */
async function faultsInAll(page: Page, which: "all" | "few" = "all"): Promise<readonly string[]> {
  const found: string[] = [];
  for (const { name, width, media, rules } of looks) {
    if (which === "few" && rules !== "all") continue;
    await setWindow(page, width);
    await page.emulateMedia({ ...plainMedia, ...media });
    found.push(...(await faultsIn(page, rules)).map((fault) => `at ${name}: ${fault}`));
  }
  return found;
}

const book = sampleBook();
const [kit, item, remake] = ["sp-2026-02", "st-001", "rm-low-light"];
const only = <T extends { id: string }>(records: readonly T[] | null | undefined, id: string) =>
  records?.filter((record) => record.id === id);

const addresses = placesOf({
  kits: only(book.kits, kit),
  stash: only(book.stash, item),
  remakes: only(book.remakes, remake),
});

for (const address of addresses)
  test(`axe finds nothing at ${address}`, async ({ page }) => {
    await open(page, address);
    expect(await faultsInAll(page)).toEqual([]);
  });

for (const address of plainPlaces)
  atFirst(`axe finds nothing at ${address} of an empty notebook`, async ({ page }) => {
    await open(page, address);
    expect(await faultsInAll(page, "few")).toEqual([]);
  });

type State = Readonly<{ name: string; at: string; act: (page: Page) => Promise<void> }>;

const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).first().click();

/** What a page looks like in the middle of something. */
const states: readonly State[] = [
  {
    name: "while searching",
    at: "/",
    act: async (page) => {
      await page.getByRole("combobox", { name: "Find a kit" }).fill("gouache");
      await page.getByRole("option").first().waitFor();
    },
  },
  {
    name: "while adding to the stash",
    at: "/stash",
    act: async (page) => {
      await press(page, "Add");
      await page.getByLabel("What you have").fill("2 gouache tubes moss 15 ml");
    },
  },
  { name: "while changing a thing", at: "/stash/st-001", act: (page) => press(page, "Change what it is") },
  { name: "while logging a kit", at: "/kits", act: (page) => press(page, "Log a kit") },
  {
    name: "while asking why",
    at: "/kits/sp-2026-02/worth",
    act: (page) => page.getByText("why?").first().click(),
  },
  { name: "in a dialog", at: "/keep-safe", act: (page) => press(page, "Remove everything") },
  {
    name: "with a file refused",
    at: "/keep-safe",
    act: async (page) => {
      const bad = { format: "understudy-workbook", version: 1, kits: [{ id: "k" }], stash: [{ id: 1 }] };
      const file = {
        name: "bad.json",
        mimeType: "application/json",
        buffer: Buffer.from(JSON.stringify(bad)),
      };
      await page.getByLabel("Choose a copy").setInputFiles(file);
      await page.getByText("bad.json was not restored").waitFor();
    },
  },
  {
    name: "with a change not saved",
    at: "/stash/st-001",
    act: async (page) => {
      await page.evaluate(() => Object.assign(failing, { left: 1_000, as: "QuotaExceededError" }));
      await page.getByRole("textbox", { name: "Note", exact: true }).fill("a note");
      await page.getByRole("textbox", { name: "Note", exact: true }).blur();
      await page.getByText("There is no room left").waitFor();
    },
  },
];

for (const { name, at, act } of states)
  test(`axe finds nothing ${name}`, async ({ page, context }) => {
    await letWritesFail(context);
    await open(page, at);
    await act(page);
    expect(await faultsInAll(page, "few")).toEqual([]);
  });
