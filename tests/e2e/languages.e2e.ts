import type { Page } from "@playwright/test";
import { open, step } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

const spoken = (page: Page) => page.locator("html").getAttribute("lang");
const title = (page: Page) => page.getByRole("heading", { level: 1 });

/** Does what loads the page anew, and waits until it stands again. */
async function loadedAnew(page: Page, act: () => Promise<unknown>): Promise<void> {
  await Promise.all([page.waitForEvent("load"), act()]);
  await page.locator("h1:visible").waitFor();
}

atFirst("the first page offers itself in the other language, and back", async ({ page }) => {
  await open(page, "/");
  expect(await spoken(page)).toBe("en");
  const offer = page.getByRole("button", { name: "På svenska" });
  await expect(offer).toHaveAttribute("lang", "sv");
  await offer.click();
  await expect(title(page)).toHaveText("En ny anteckningsbok");
  expect(await spoken(page)).toBe("sv");
  await page.getByRole("button", { name: "In English" }).click();
  await expect(title(page)).toHaveText("A new notebook");
  expect(await spoken(page)).toBe("en");
});

test("another language is chosen under Keep safe: the page is loaded anew at the same address, and stays so", async ({
  page,
}) => {
  await open(page, "/keep-safe");
  await loadedAnew(page, () => page.getByRole("radio", { name: "svenska" }).click());
  await expect(page).toHaveTitle("Säkert förvar - Understudy");
  expect(await spoken(page)).toBe("sv");
  expect(new URL(page.url()).pathname).toBe("/keep-safe");
  await open(page, "/stash");
  await expect(page.getByText(/^\d+ saker på \d+ ställen/).first()).toBeVisible();
  await open(page, "/keep-safe");
  await loadedAnew(page, () => page.getByRole("radio", { name: "English" }).click());
  await expect(page).toHaveTitle("Keep safe - Understudy");
  expect(await spoken(page)).toBe("en");
});

/** One screen a locale: the rule at Japan's border, and the kit whose rates are old. */
const locales = [
  {
    locale: "en-GB",
    rule: "duty 3 % above JPY 10,000, tax 10 % above JPY 10,000, a fee of JPY 200",
    fee: "duty 2.5 % above EUR 150.00, tax 23 %, a fee of EUR 6.50",
    old: "as of 30 Nov 2025, but the newest rates before that are of 31 Oct 2025.",
  },
  {
    locale: "sv-SE",
    rule: "duty 3 % above 10 000 JPY, tax 10 % above 10 000 JPY, a fee of 200 JPY",
    fee: "duty 2,5 % above 150,00 EUR, tax 23 %, a fee of 6,50 EUR",
    old: "as of 30 nov. 2025, but the newest rates before that are of 31 okt. 2025.",
  },
  {
    locale: "de-DE",
    rule: "duty 3 % above 10.000 JPY, tax 10 % above 10.000 JPY, a fee of 200 JPY",
    fee: "duty 2,5 % above 150,00 EUR, tax 23 %, a fee of 6,50 EUR",
    old: "as of 30. Nov. 2025, but the newest rates before that are of 31. Okt. 2025.",
  },
  {
    locale: "ja-JP",
    rule: "duty 3 % above JPY 10,000, tax 10 % above JPY 10,000, a fee of JPY 200",
    fee: "duty 2.5 % above EUR 150.00, tax 23 %, a fee of EUR 6.50",
    old: "as of 2025年11月30日, but the newest rates before that are of 2025年10月31日.",
  },
] as const;

// Source: Unicode CLDR's patterns of these locales for money named by its code, and for days of medium length;
// ISO 4217 for the digits (JPY 0, EUR 2).
test("numbers, money and dates go by the locale that is chosen, whatever the words are in", async ({
  page,
}) => {
  await open(page, "/keep-safe");
  for (const { locale, rule, fee, old } of locales) {
    await loadedAnew(page, () => page.getByLabel("Numbers and dates").selectOption(locale));
    await expect(page.getByLabel("Numbers and dates")).toHaveValue(locale);
    await open(page, "/markets");
    for (const said of [
      `From anywhere else: ${rule} when either is due, counted on the goods.`,
      `From anywhere else: ${fee} when either is due, counted on the goods and the postage.`,
      `Lamp in the boathouse counts prices ${old}`,
    ]) {
      await expect(page.getByText(said).first(), locale).toBeVisible();
    }
    expect(await spoken(page)).toBe("en");
    await step(page, "/keep-safe");
  }
});
