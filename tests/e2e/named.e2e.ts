import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { fewOf, open, placesOf, step } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U4: colour never stands alone. Each swatch has its name and a number as text in its own row, figure
// or link; a picture made of swatches says in its own text what it shows. A thing of no colour needs no number.

const { stash } = sampleBook();
const colourless = (stash ?? []).filter(({ supply }) => !supply.colour).map(({ supply }) => supply.name);

/** Swatches without a name or a number beside them, by what does stand there. `drawn`: how many there are in all. */
const bareIn = (page: Page) =>
  page.evaluate((colourless) => {
    const drawn = [...document.querySelectorAll("main svg[class*='swatch']:not(svg svg)")];
    const beside = drawn.map(
      (svg) => svg.closest("li, tr, figure, a, [data-chosen]")?.textContent?.trim() ?? "",
    );
    const needsNone = (text: string) => colourless.some((name) => text.startsWith(name));
    const pictures = [...document.querySelectorAll("main svg[role='img']")];
    const said = pictures.map((svg) => svg.getAttribute("aria-label") ?? "");
    return {
      drawn: drawn.length,
      bare: beside.filter((text) => !/\p{L}{3}/u.test(text) || !(/\p{N}/u.test(text) || needsNone(text))),
      silent: said.filter((text) => !/\p{L}{3}/u.test(text)).map(() => "a picture without words"),
    };
  }, colourless);

for (const width of [1440, 390])
  test(`each swatch has its name and a number beside it at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await open(page, "/");
    const found: string[] = [];
    let drawn = 0;
    for (const address of placesOf(fewOf(sampleBook()))) {
      await step(page, address);
      await page.evaluate(() => document.fonts.ready);
      const { bare, silent, drawn: here } = await bareIn(page);
      drawn += here;
      found.push(...[...bare, ...silent].map((what) => `${address}: ${what}`));
    }
    expect(drawn).toBeGreaterThan(300);
    expect(found).toEqual([]);
  });
