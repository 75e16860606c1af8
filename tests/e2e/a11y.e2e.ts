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

/** Whatever differs with the width is laid out anew; in other colours only the rule for colours can say otherwise. */
const widths = [1440, 768, 320];
const otherColours = [
  { name: "dark", media: { colorScheme: "dark" } },
  { name: "forced colours", media: { forcedColors: "active" } },
] as const;

type Look = Readonly<{ name: string; width: number; media: Media; rules: "all" | "colour" }>;
type Media = Readonly<{ colorScheme?: "light" | "dark"; forcedColors?: "active" | "none" }>;

const looks: readonly Look[] = [
  ...widths.flatMap((width): readonly Look[] => [
    { name: `${width} light`, width, media: {}, rules: "all" },
    ...otherColours.map(({ name, media }) => ({
      name: `${width} ${name}`,
      width,
      media,
      rules: "colour" as const,
    })),
  ]),
  { name: "390 light", width: 390, media: {}, rules: "all" },
];

const plainMedia = { colorScheme: "light", forcedColors: "none" } as const;

/**
 * Makes the window as high as the page, so that nothing is under the bar at its foot just by the scrolling. Long lists
 * draw what comes into sight, so the page may grow with its window.
 */
async function setWindow(page: Page, width: number): Promise<void> {
  let height = 1000;
  for (let needed = height, round = 0; round === 0 || (needed > height && round < 8); round++) {
    height = needed;
    await page.setViewportSize({ width, height });
    await page.locator("h1:visible").waitFor(); // parts that only this width has may have to load
    needed = await page.evaluate(async () => {
      // Pictures are drawn anew for the width once it has been measured.
      for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
      return document.documentElement.scrollHeight;
    });
  }
}

type Violation = Readonly<{
  id: string;
  nodes: readonly Readonly<{ target: readonly string[]; failureSummary?: string }>[];
}>;

/** What the first run leaves in the page. */
declare const axe: {
  run: (options: unknown) => Promise<Readonly<{ violations: readonly Violation[] }>>;
};

/** What axe finds in one look at the open page: each rule with the elements that break it. */
async function faultsIn(page: Page, rules: Look["rules"]): Promise<readonly string[]> {
  const runOnly =
    rules === "all" ? { type: "tag", values: tags } : { type: "rule", values: ["color-contrast"] };
  const violations = await page.evaluate(
    async (runOnly) => (await axe.run({ runOnly, resultTypes: ["violations"] })).violations,
    runOnly,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary}`),
  );
}

/** The faults of the open page in every look; a state is laid out at 390 as it is at 320. */
async function faultsInAll(page: Page, of: "place" | "state"): Promise<readonly string[]> {
  // One frame, so no page is opened to gather results in. The builder puts axe into the page, where it stays.
  await new AxeBuilder({ page }).setLegacyMode().withRules("document-title").analyze();
  const found: string[] = [];
  let last = 0;
  for (const { name, width, media, rules } of looks) {
    if (of === "state" && width === 390) continue;
    await page.emulateMedia({ ...plainMedia, ...media });
    if (width !== last) await setWindow(page, width);
    last = width;
    found.push(...(await faultsIn(page, rules)).map((fault) => `at ${name}: ${fault}`));
  }
  return found;
}

// Axe reads a long page nine times over; on a machine with other work to do that takes its time.
test.describe.configure({ timeout: 120_000 });

const book = sampleBook();
const [kit, item, remake] = ["sp-2026-02", "st-001", "rm-low-light"];
const only = <T extends { id: string }>(records: readonly T[] | null | undefined, id: string) =>
  records?.filter((record) => record.id === id);

/** A few rows of the list say as much of its colours and its roles as a hundred, in a tenth of the time. */
const shorter = (address: string) => (address === "/stash?view=list" ? `${address}&kind=marker` : address);

const addresses = [
  ...placesOf({
    kits: only(book.kits, kit),
    stash: only(book.stash, item),
    remakes: only(book.remakes, remake),
  }),
  "/words",
  "/parts",
  "/no/such/place",
];

for (const address of addresses.map(shorter))
  test(`axe finds nothing at ${address}`, async ({ page }) => {
    await open(page, address);
    expect(await faultsInAll(page, "place")).toEqual([]);
  });

for (const address of plainPlaces)
  atFirst(`axe finds nothing at ${address} of an empty notebook`, async ({ page }) => {
    await open(page, address);
    expect(await faultsInAll(page, "state")).toEqual([]);
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
  {
    name: "while choosing from a list",
    at: "/parts",
    act: async (page) => {
      await page.getByRole("combobox", { name: "Where it is kept" }).click();
      await page.getByRole("option", { name: "cup, left" }).waitFor();
    },
  },
  {
    name: "while adding a price",
    at: "/kits/sp-2026-02/prices",
    act: async (page) => {
      await page.getByRole("table").getByRole("button").first().click();
      await page.getByLabel("Price", { exact: true }).first().fill("61.50");
    },
  },
  {
    name: "with a row of the stand-ins opened",
    at: "/remakes/rm-low-light/stand-ins",
    act: async (page) => {
      await page.getByText("why?").nth(1).click();
      await page
        .getByRole("combobox", { name: /Pick|Choose|another/i })
        .first()
        .waitFor();
    },
  },
  {
    name: "with the palette as a table",
    at: "/remakes/rm-low-light/stand-ins",
    act: (page) => page.getByText("the same as a table").click(),
  },
  {
    name: "with a notice",
    at: "/remakes/rm-low-light/stand-ins",
    act: async (page) => {
      await page.getByRole("button", { name: /^swap/ }).first().click();
      await page.getByRole("button", { name: "Undo" }).waitFor();
    },
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
    expect(await faultsInAll(page, "state")).toEqual([]);
  });
