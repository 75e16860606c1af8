import { open } from "./places.ts";
import { expect, test } from "./watched.ts";

// What a first user lost most time by: going elsewhere for a country and a rate. The figures, worked by hand:
// one line at SEK 60.00, one kit at 5.00 EUR × 11.00 = SEK 55.00, so the kit gains 5.00.
test("a kit is valued without leaving it: country, currency and rate are asked where they are missed", async ({
  page,
}) => {
  await open(page, "/");
  await page.getByRole("link", { name: "Log a kit" }).click();
  const maker = page.getByRole("combobox", { name: "Maker" });
  await expect(maker).toBeFocused();
  await maker.fill("Nordkit");
  await maker.press("Enter");
  await page.getByLabel("Month").fill("November 2026");
  await page.getByLabel("Month").press("Enter");

  await page.getByLabel("Line 1, as you would say it").fill("1 gouache tube moss 15 ml");
  await page.keyboard.press("Enter");
  await page.getByText("Line 1 added").first().waitFor();
  await page.getByRole("button", { name: "Add a tier" }).click();
  await page.getByRole("textbox", { name: "One payment, for all its kits" }).fill("5");
  await page.getByRole("textbox", { name: "One payment, for all its kits" }).press("Enter");
  await expect(page.getByText("Month by month").first()).toBeVisible();

  await page.getByRole("link", { name: "Worth", exact: true }).click();
  await page.getByRole("textbox", { name: "Market", exact: true }).fill("Sweden");
  await page.getByRole("combobox", { name: "Currency" }).fill("SEK");
  await page.getByRole("combobox", { name: "Currency" }).press("Enter");
  await page.getByRole("button", { name: "Add this market" }).click();
  await page.getByRole("textbox", { name: /SEK/ }).fill("11");
  await page.getByRole("textbox", { name: /SEK/ }).press("Enter");

  await expect(page.getByRole("heading", { name: "Against each tier" })).toBeVisible();
  await expect(page.getByRole("table", { name: /tier/i }).first()).toContainText("55.00");
});
