import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { lostAt } from "./lost.ts";
import { fewOf, open, placesOf } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U5. Source: WCAG 2.2, 1.4.12 (text spacing), its four measures all at once.
const spacing = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-bottom: 2em !important; }
`;

/** As a reader's own style sheet would: the content policy has no say in sheets made by script. */
const setSpacing = (page: Page) =>
  page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, spacing);

const addresses = placesOf(fewOf(sampleBook()));

for (const width of [1440, 390])
  test(`text set wider apart loses nothing at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await open(page, "/");
    await setSpacing(page);
    await expect(page.getByText("This is the sample")).toHaveCSS("letter-spacing", /^1\.\d+px$|^2\.\d+px$/);
    expect(await lostAt(page, addresses)).toEqual([]);
  });
