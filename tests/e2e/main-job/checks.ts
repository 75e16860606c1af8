import { expect, type Page } from "@playwright/test";

import { about } from "./acts.ts";
import { priced, worth } from "./figures.ts";
import { published, publishedText } from "./published.ts";
import { rowsOf, seen, seenIn } from "./seen.ts";

type Country = keyof typeof worth;

const tab = (page: Page, market: Country) =>
  page.getByRole("navigation", { name: "Market" }).getByRole("link", { name: market }).click();

/** The Prices page of one market, row by row. */
export async function checkPrices(page: Page, market: Country): Promise<void> {
  await tab(page, market);
  const table = page.getByRole("table", { name: `Prices in ${market}` });
  await expect(table).toBeVisible();
  await expect(page.getByText(priced[market].lead)).toBeVisible();
  const rows = await rowsOf(table);
  expect(rows.map((row) => row.slice(0, 5))).toEqual(priced[market].rows);
}

/** The Worth page of one market: the finding, the chart's own words, every table, the border. */
export async function checkWorth(page: Page, market: Country): Promise<void> {
  const told = worth[market];
  await tab(page, market);
  await expect(page.getByText(told.lead)).toBeVisible();
  await expect(page.getByText(told.more)).toBeVisible();
  for (const note of told.notes) await expect(page.getByText(note, { exact: true })).toBeVisible();
  await expect(page.getByRole("img", { name: told.chart, exact: true })).toBeVisible();
  const table = (name: string) => page.getByRole("table", { name });
  expect(await rowsOf(table(`What one kit costs in ${market}`))).toEqual(told.tiers);
  expect(await rowsOf(table(`Each line's list and shop price in ${market}`))).toEqual(told.lines);
  expect(await rowsOf(table("The line at which each tier has paid for itself"))).toEqual(told.passing);
  const border = page.getByRole("region", { name: "Without the border" });
  expect(await seenIn(border.getByRole("paragraph"))).toEqual(told.border);
}

/** How a tier's cost comes about, opened and closed again. */
export async function checkMaking(page: Page, market: Country, tier: string): Promise<void> {
  await page.getByRole("button", { name: about("why\\?", `the cost of ${tier}`) }).click();
  const opened = page.getByRole("table", { name: `What one kit costs in ${market}` }).getByRole("listitem");
  expect(await seenIn(opened)).toEqual(worth[market].making);
  await page.getByRole("button", { name: about("close", `the cost of ${tier}`) }).click();
}

/** The finished text on the page, section by section first, so that a difference is easy to find. */
export async function checkText(page: Page): Promise<void> {
  const text = (await page.getByRole("region", { name: "The text" }).locator("pre").textContent()) ?? "";
  for (const section of published) expect(text).toContain(section.join("\n"));
  expect(text).toBe(publishedText);
}

/** The rows of the stand-ins. */
export const standIns = (page: Page) => page.getByRole("region", { name: "Stand-ins" }).locator("> ol > li");

export const checkRows = async (page: Page, rows: readonly (readonly [number, string])[]): Promise<void> => {
  for (const [index, row] of rows) await expect.poll(() => seen(standIns(page).nth(index))).toBe(row);
};
