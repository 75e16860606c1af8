import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { canonicalJson } from "../../src/engine/workbook/index.ts";
import { sampleBook } from "../unit/sample.ts";
import { bookIn, rowsIn } from "./kept/rows.ts";
import { open } from "./places.ts";
import { test as empty } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

const kept = async (page: Page) => bookIn(await rowsIn(page));
const found = (page: Page) => page.getByRole("rowheader");
const undo = (page: Page) => page.getByRole("button", { name: "Undo", exact: true }).click();

test("colour words in either language find the same; what is close to a thing keeps its address", async ({
  page,
}) => {
  await open(page, "/stash?view=list");
  const search = page.getByRole("searchbox", { name: "Search the stash" });
  await search.fill("pale grey-green");
  await expect(page.getByText(/of that colour|found$/).first()).toBeVisible();
  const names = await found(page).allTextContents();
  await search.fill("ljust grågrön");
  await expect(found(page)).toHaveText(names);
  await search.fill("quibble green");
  await expect(page.getByText("nothing goes by “quibble”")).toBeVisible();

  await open(page, "/stash/st-001?view=list");
  await page.getByRole("link", { name: "Close to this one" }).click();
  await expect(page).toHaveURL(/\/stash\?near=st-001$/);
  await page.reload();
  await expect(found(page).first()).toContainText("Gouache, fern shade");
  await expect(page.getByText(/nearest to Gouache, fern shade/)).toBeVisible();
  await page
    .getByRole("button", { name: "gouache", exact: true })
    .or(page.getByRole("button", { name: /^paint/ }))
    .first()
    .click();
  await expect(page).toHaveURL(/near=st-001.*kind=paint/);
});

test("several are chosen by keyboard, changed in one act and taken back by one undo", async ({ page }) => {
  await open(page, "/stash?view=list");
  const before = await kept(page);
  await page.getByRole("button", { name: "Choose several" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("checkbox").first().focus();
  await page.keyboard.press("Space");
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  await expect(page.getByText("3 chosen")).toBeVisible();
  expect((await new AxeBuilder({ page }).include("main").analyze()).violations).toEqual([]);
  await page.getByRole("button", { name: "Change…" }).press("Enter");
  const dialog = page.getByRole("dialog");
  await expect(dialog).toBeVisible();
  expect((await new AxeBuilder({ page }).include("dialog[open]").analyze()).violations).toEqual([]);
  await dialog.getByRole("textbox", { name: "Tags to put on all" }).fill("sea");
  await page.keyboard.press("Tab");
  await dialog.getByRole("button", { name: "Change 3 things" }).press("Enter");
  await expect(page.getByText("Changed the tags of 3 items")).toBeVisible();
  const tagged = async () => (await kept(page)).stash?.filter(({ tags }) => tags?.includes("sea")).length;
  await expect.poll(tagged).toBe(3);
  await undo(page);
  await expect.poll(async () => canonicalJson(await kept(page))).toBe(canonicalJson(before));
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("checkbox")).toHaveCount(0);
});

test("several are removed after a look, and come back", async ({ page }) => {
  await open(page, "/stash");
  const before = await kept(page);
  await page.getByRole("button", { name: "Choose several" }).click();
  await page.getByRole("checkbox").first().click();
  await page
    .getByRole("checkbox")
    .nth(3)
    .click({ modifiers: ["Shift"] });
  await page.getByRole("button", { name: "Remove…" }).click();
  await expect(page.getByRole("dialog")).toContainText("Alcohol marker, skin of milk");
  await page.getByRole("button", { name: /^Remove all \d+$/ }).click();
  await expect(page.getByText(/^Removed \d+ items from the stash/)).toBeVisible();
  expect((await kept(page)).stash?.length).toBeLessThan(before.stash?.length ?? 0);
  expect((await rowsIn(page)).snapshots.length).toBeGreaterThan(0);
  await undo(page);
  await expect.poll(async () => canonicalJson(await kept(page))).toBe(canonicalJson(before));
});

/** Loads a notebook as a copy is brought back. */
async function bringBack(page: Page, book: object): Promise<void> {
  await open(page, "/keep-safe");
  const buffer = Buffer.from(JSON.stringify(book));
  await page
    .getByLabel("Choose a copy")
    .setInputFiles({ name: "book.json", mimeType: "application/json", buffer });
  await page.getByRole("button", { name: "Restore it" }).click();
  await expect(page.getByText(/^The copy is restored/)).toBeVisible({ timeout: 20_000 });
}

empty("two that are one are made one, with the parts of both, and parted again by undo", async ({ page }) => {
  const book = sampleBook();
  const fern = book.stash?.find(({ id }) => id === "st-001");
  const twice = { ...fern, id: "st-again", place: "attic", owned: 2, tags: ["gift"] };
  await bringBack(page, { ...book, stash: [...(book.stash ?? []), twice] });
  const before = await kept(page);
  await open(page, "/stash?tidy=doubles");
  const group = page
    .getByRole("listitem")
    .filter({ has: page.getByRole("heading", { name: /Gouache, fern shade/ }) });
  await expect(group).toContainText("the same maker, line and number");
  await group.getByRole("radio", { name: "attic" }).check();
  await group.getByRole("button", { name: "Make one of Gouache, fern shade and its doubles" }).click();
  await expect(page.getByText("No two things look like one")).toBeVisible();
  const one = (await kept(page)).stash?.filter(({ supply }) => supply.name === "Gouache, fern shade");
  expect(one).toMatchObject([{ owned: 3, place: "attic", tags: ["gift", "landscape"] }]);
  await undo(page);
  await expect.poll(async () => canonicalJson(await kept(page))).toBe(canonicalJson(before));
  await page.getByRole("button", { name: "Gouache, fern shade and its doubles are not the same" }).click();
  await page.reload();
  await expect(page.getByText("No two things look like one")).toBeVisible();
});

const thousands = (count: number) => ({
  format: "understudy-workbook",
  version: 1,
  stash: Array.from({ length: count }, (_, at) => ({
    id: `st-${at}`,
    supply: {
      family: "paint",
      name: `Gouache, shade ${String(at).padStart(5, "0")}`,
      colour: { hex: `#${((at * 7_919 * 13) % 0xffffff).toString(16).padStart(6, "0")}` },
    },
    place: `box ${at % 20}`,
  })),
});

// Gate P13: as many nodes with ten thousand as with one thousand.
empty("ten thousand things draw no more than one thousand, wherever one scrolls", async ({ page }) => {
  const nodes = async () => {
    await open(page, "/stash?view=list");
    await expect(found(page).first()).toContainText("shade 00000");
    await page.waitForFunction(() => document.querySelectorAll("main [data-piece]").length > 1);
    return page.locator("main table *").count();
  };
  await bringBack(page, thousands(1_000));
  const few = await nodes();
  await bringBack(page, thousands(10_000));
  expect(await nodes()).toBe(few);
  await expect(async () => {
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    await expect(found(page).last()).toContainText("shade 09999", { timeout: 1_000 });
  }).toPass();
  expect(await page.locator("main table *").count()).toBeLessThan(few * 1.5);
  await expect(page.getByRole("row").last()).toHaveAttribute("aria-rowindex", "10001");
});
