import { expect, type Locator, type Page } from "@playwright/test";

import {
  border,
  drawer,
  kit,
  lineNames,
  lines,
  markets,
  type prices,
  rates,
  stash,
  stashNames,
  tiers,
} from "./typed.ts";

/** The place of the fore-edge. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page
    .getByRole("navigation", { name: "Places" })
    .getByRole("link", { name: place, exact: true })
    .click();
}

/** Writes into a field and leaves it, as going on with Tab does. */
export async function fill(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Tab");
}

/** "change" with the name of the thing it is about, which is only read out. */
export const about = (act: string, name: string): RegExp =>
  new RegExp(`^${act}\\s*, ${name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}$`);

/** The app says when everything is kept. */
export async function kept(page: Page): Promise<void> {
  await expect(page.getByRole("banner")).toContainText(/Saved/);
}

/** The kit, on one of its pages. */
export async function openKit(page: Page, tab: "Contents" | "Prices" | "Worth"): Promise<void> {
  await goTo(page, "Kits");
  await page.getByRole("main").getByRole("link", { name: kit.title }).click();
  await page.getByRole("link", { name: tab, exact: true }).click();
}

/** Of the block only half would be used. */
export async function halfTheBlock(page: Page): Promise<void> {
  const block = "Watercolour block, 24 × 32 cm";
  await page.getByRole("button", { name: about("change", block) }).click();
  await fill(page.getByLabel("How much of it I would use"), "50");
  await page.getByRole("button", { name: about("close", block) }).click();
  await expect(page.getByText("would use 50 in 100")).toBeVisible();
}

export async function logKit(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Log a kit" }).click();
  await fill(page.getByRole("combobox", { name: "Maker" }), kit.maker);
  await fill(page.getByLabel("Month"), kit.month);
  await fill(page.getByLabel("Title, if it has one"), kit.title);
  await page.getByRole("button", { name: "Log this kit" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(kit.title);
}

/** Eight lines, each typed key by key and taken with Enter; the focus stays in the field. */
export async function typeContents(page: Page): Promise<void> {
  await page.getByLabel("Line 1, as you would say it").click();
  for (const [index, line] of lines.entries()) {
    await expect(page.getByLabel(`Line ${index + 1}, as you would say it`)).toBeFocused();
    await page.keyboard.type(line);
    await page.keyboard.press("Enter");
    await expect(page.getByRole("button", { name: about("change", lineNames[index] ?? "") })).toBeVisible();
  }
  await expect(page.getByText("There are eight things in it.")).toBeVisible();
}

/** Twelve things for the shelves, in the same way. */
export async function typeStash(page: Page): Promise<void> {
  await goTo(page, "Stash");
  await fill(page.getByRole("combobox", { name: "Where these live" }), drawer);
  await page.getByLabel("What you have, as you would say it").click();
  for (const [index, thing] of stash.entries()) {
    await page.keyboard.type(thing);
    await page.keyboard.press("Enter");
    await expect(page.getByRole("status").filter({ hasText: `${stashNames[index]}` })).toBeVisible();
  }
}

/** Where it ships from and its prompt: facts about the kit, kept as each field is left. */
export async function tellAboutKit(page: Page): Promise<void> {
  await page.getByLabel("Ships from").selectOption("Sweden");
  await fill(page.getByLabel("Prompt"), kit.prompt);
  await kept(page);
}

/** A month at a time, and three at once: one payment, postage, postage to Japan, a discount. */
export async function typeTiers(page: Page): Promise<void> {
  for (const [index, tier] of tiers.entries()) {
    await page.getByRole("button", { name: "Add a tier" }).click();
    const costs = page.getByRole("region", { name: "What it costs to subscribe" });
    await fill(costs.getByLabel("What it is called"), tier.name);
    await fill(costs.getByLabel("Kits for one payment"), tier.kits);
    if (index === 0) await costs.getByLabel("One payment, for all its kits, Currency").selectOption("EUR");
    await fill(costs.getByLabel("One payment, for all its kits", { exact: true }), tier.price);
    await costs.getByRole("button", { name: "Add this tier" }).click();
    await costs.getByRole("button", { name: about("change", tier.name) }).click();
    await fill(costs.getByLabel("Postage per kit", { exact: true }), tier.postage);
    if (tier.discount) await fill(costs.getByLabel("Off one payment", { exact: true }), tier.discount);
    if (tier.postageToJapan)
      await fill(costs.getByLabel("Postage to Japan", { exact: true }), tier.postageToJapan);
    await costs.getByRole("button", { name: about("close", tier.name) }).click();
  }
  await kept(page);
}

/** A price found: opens its line, says what it is and what it cost, and adds it. */
export async function typePrice(page: Page, found: (typeof prices)[number]): Promise<void> {
  await page.getByRole("button", { name: about("prices", found.line) }).click();
  const form = page.getByRole("form", { name: "Add a price found" });
  await form.getByLabel("What it is").selectOption(found.kind);
  await form.getByLabel("Price, Currency").selectOption(found.currency);
  await form.getByLabel("Price", { exact: true }).fill(found.price);
  if ("shop" in found) await fill(form.getByRole("combobox", { name: "Shop" }), found.shop);
  if ("low" in found) await fill(form.getByLabel("At least"), found.low);
  if ("high" in found) await fill(form.getByLabel("At most"), found.high);
  await fill(form.getByLabel("Source"), found.source);
  await form.getByRole("button", { name: "Add this price" }).click();
  await expect(page.getByRole("region", { name: "Prices found" }).getByRole("listitem")).toHaveCount(1);
  await page.getByRole("button", { name: about("close", found.line) }).click();
}

/** Two markets, the border of one of them, where the person lives, and a day's rates by hand. */
export async function setUpMarkets(page: Page): Promise<void> {
  await goTo(page, "Markets");
  const listed = page.getByRole("region", { name: "Markets and their borders" });
  for (const { name, currency } of markets) {
    await listed.getByRole("button", { name: "Add a market" }).click();
    await fill(listed.getByLabel("Market", { exact: true }), name);
    await fill(listed.getByRole("combobox", { name: "Currency" }), currency);
    await listed.getByRole("button", { name: "Add this market" }).click();
  }
  await typeBorder(page);
  await page.getByLabel("Where I live").selectOption("Sweden");
  const counted = page.getByRole("group", { name: "Counted for" });
  for (const { name } of markets) await counted.getByRole("checkbox", { name }).check();
  await typeRates(page);
  await expect(page.getByText("Worth is counted for Sweden and Japan.")).toBeVisible();
  await kept(page);
}

async function typeBorder(page: Page): Promise<void> {
  const listed = page.getByRole("region", { name: "Markets and their borders" });
  await listed.getByRole("button", { name: about("change", "Japan") }).click();
  await listed.getByRole("button", { name: "Add a border rule" }).click();
  const rule = listed.getByRole("group", { name: "Border rule 1" });
  await fill(rule.getByLabel("Duty", { exact: true }), border.duty);
  await fill(rule.getByLabel("Duty-free up to"), border.dutyFree);
  await fill(rule.getByLabel("Tax", { exact: true }), border.tax);
  await fill(rule.getByLabel("Tax-free up to"), border.taxFree);
  await fill(rule.getByLabel("Handling fee"), border.fee);
  await rule.getByRole("radio", { name: "the goods and the postage" }).check();
  await listed.getByRole("button", { name: about("close", "Japan") }).click();
}

async function typeRates(page: Page): Promise<void> {
  const days = page.getByRole("region", { name: "Exchange rates" });
  await days.getByRole("button", { name: "Put in a day's rates" }).click();
  await fill(days.getByLabel("Day", { exact: true }), rates.day);
  await fill(days.getByLabel("1 EUR in SEK"), rates.SEK);
  await fill(days.getByLabel("1 EUR in JPY"), rates.JPY);
  await fill(days.getByLabel("Source", { exact: true }), rates.source);
  await days.getByRole("button", { name: "Add these rates" }).click();
}
