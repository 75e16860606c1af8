import type { Page } from "@playwright/test";
import { families } from "../../src/engine/supply/index.ts";
import { photograph } from "./parts/photograph.ts";
import { open } from "./places.ts";
import { expect, test } from "./watched.ts";

// The sheet of parts, photographed: what each part looks like in each of its states. The look itself is judged by
// eye once, when a photograph is taken; these tests tell when it has changed.

const looks = [
  { look: "1440-light", width: 1440, media: { colorScheme: "light" } },
  { look: "1440-dark", width: 1440, media: { colorScheme: "dark" } },
  { look: "1440-forced", width: 1440, media: { forcedColors: "active" } },
  { look: "390-light", width: 390, media: { colorScheme: "light" } },
] as const;

const sections = [
  "Ground, ink, rule",
  "Swatches, by family",
  "Swatches, large",
  "Pairs",
  "Type",
  "Acts and fields",
  "Tabs, table, figures",
  "Picture of worth",
  "The palette",
  "Dialog, notice, empty, fault",
] as const;

/** Swatches are the same in every look but for their chip, and weigh most: these are kept from some looks only. */
const keptFrom: Readonly<Record<string, readonly string[]>> = {
  "Swatches, by family": ["1440-light"],
  "Swatches, large": ["1440-light"],
  Pairs: ["1440-light", "1440-dark"],
};

const fileName = (title: string) => title.toLowerCase().replace(/[^a-z]+/g, "-");

async function openSheet(page: Page): Promise<void> {
  await open(page, "/parts");
  await page.getByRole("region", { name: "The palette" }).getByRole("img").first().waitFor();
  await page.evaluate(() => document.fonts.ready);
}

/** What has to be on the sheet however wide it is, and whatever paints it. */
async function checkSheet(page: Page, width: number): Promise<void> {
  for (const name of sections) await expect(page.getByRole("region", { name, exact: true })).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  const drawn = await page.evaluate(() =>
    [...document.querySelectorAll("main svg[viewBox]:not(svg svg)")].map((svg) => {
      const { width, height } = svg.getBoundingClientRect();
      return { width, height, ratio: Number(svg.getAttribute("width")) / Number(svg.getAttribute("height")) };
    }),
  );
  expect(drawn.length).toBeGreaterThan(80);
  // A swatch may shrink with its column, but is never squeezed.
  expect(drawn.filter(({ width, height, ratio }) => Math.abs(width / height / ratio - 1) > 0.02)).toEqual([]);
}

for (const { look, width, media } of looks)
  test.describe(look, () => {
    test.use({ viewport: { width, height: 1000 } });

    test(`the sheet of parts at ${look}`, async ({ page }, info) => {
      await page.emulateMedia(media);
      await openSheet(page);
      await checkSheet(page, width);
      for (const name of sections) {
        if (!(keptFrom[name] ?? [look]).includes(look)) continue;
        await photograph(page.getByRole("region", { name, exact: true }), `${look}-${fileName(name)}`, info);
      }
    });

    test(`the parts' states at ${look}`, async ({ page }, info) => {
      await page.emulateMedia(media);
      await openSheet(page);
      const keep = (name: string, of: string | RegExp) =>
        photograph(page.locator("main div").filter({ hasText: of }).last(), `${look}-${name}`, info);

      const find = page.getByLabel("Find in the stash");
      await find.focus();
      await expect(find).toBeFocused();
      await keep("field-in-hand", /^Find in the stasha name/);
      await find.fill("moss");
      await expect(find).toHaveValue("moss");
      await keep("field-filled", /^Find in the stasha name/);

      const where = page.getByRole("combobox", { name: "Where it is kept" });
      await where.click();
      const places = page.getByRole("listbox", { name: "Where it is kept" });
      await expect(places.getByRole("option")).toHaveCount(5);
      await photograph(places, `${look}-chooser-open`, info);
      await page.keyboard.press("Escape");

      const kind = page.getByRole("combobox", { name: "Kind" });
      await kind.fill("sealing wax");
      await photograph(page.getByText("Nothing like it yet"), `${look}-chooser-none-found`, info);
      await page.keyboard.press("Escape");

      const opened = page.getByLabel("Opened", { exact: true });
      await opened.fill("31 April 2026");
      await opened.blur();
      await expect(opened).toHaveAttribute("aria-invalid", "true");
      await keep("date-fault", /^Opened/);
      await opened.fill("3/4/2026");
      await opened.blur();
      await expect(page.getByRole("button", { name: /2026/ })).toHaveCount(2);
      await keep("date-asked", /^Opened/);

      await page.getByRole("button", { name: "More acts" }).click();
      await photograph(page.getByRole("menu"), `${look}-menu-open`, info);
      await page.keyboard.press("Escape");

      await page.getByRole("button", { name: "Check the fields" }).click();
      await photograph(page.getByRole("region", { name: /2|two/i }).last(), `${look}-fault-list`, info);

      await page.getByRole("button", { name: "Show it as a notice" }).click();
      const notice = page.getByRole("status").filter({ hasText: "Haze is marked dried out" });
      await expect(notice.getByRole("button", { name: "Undo" })).toBeVisible();
      await photograph(notice.locator("div"), `${look}-notice`, info);
      await notice.getByRole("button", { name: "Close" }).click();

      await page.getByRole("button", { name: "Open the dialog" }).click();
      await photograph(page.getByRole("dialog"), `${look}-dialog`, info);
    });
  });

test("every family has its swatch on the sheet, at 24 px and at 600", async ({ page }) => {
  await openSheet(page);
  const names = await page
    .getByRole("region", { name: "Swatches, by family" })
    .getByRole("listitem")
    .allTextContents();
  const words: Readonly<Record<string, RegExp>> = {
    marker: /^Marker/,
    paint: /^Gouache/,
    "colour-pencil": /^Colour pencil/,
    graphite: /^Graphite/,
    liner: /^Liner/,
    pastel: /pastel/,
    ink: /^Ink/,
    paper: /^Sheet/,
    eraser: /^Eraser/,
    brush: /brush/,
    tool: /^Ruler/,
    other: /^Something else/,
  };
  expect(families.filter((family) => !names.some((name) => words[family]?.test(name)))).toEqual([]);
  expect(await page.locator("main svg[height='24']").count()).toBeGreaterThanOrEqual(families.length);
  expect(await page.locator("main svg[width='600']").count()).toBe(3);
});
