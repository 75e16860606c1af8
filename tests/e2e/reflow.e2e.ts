import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { lostAt } from "./lost.ts";
import { fewOf, open, placesOf, plainPlaces } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U5. Source: WCAG 2.2, success criteria 1.4.4 (resize text) and 1.4.10 (reflow, at 320 px).

const addresses = placesOf(fewOf(sampleBook()));

test.describe("in a window of 320 px", () => {
  test.use({ viewport: { width: 320, height: 640 } });

  test("nothing sticks out or is cut off", async ({ page }) => {
    await open(page, "/");
    expect(await lostAt(page, addresses)).toEqual([]);
  });

  atFirst("nor in an empty notebook", async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await open(page, "/");
    expect(await lostAt(page, plainPlaces)).toEqual([]);
  });
});

/** Sets the size of text as the browser's own settings do, so that queries of width in rem follow. */
async function setTextSize(page: Page, standard: number): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  await browser.send("Page.setFontSizes", { fontSizes: { standard, fixed: standard } });
}

for (const width of [1440, 768, 390])
  test(`text twice as large loses nothing at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await setTextSize(page, 32);
    await open(page, "/");
    await expect(page.locator("html")).toHaveCSS("font-size", "32px");
    expect(await lostAt(page, addresses)).toEqual([]);
  });
