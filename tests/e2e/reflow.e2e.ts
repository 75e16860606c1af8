import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { fewOf, open, placesOf, plainPlaces, step } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U5. Source: WCAG 2.2, success criteria 1.4.4 (resize text) and 1.4.10 (reflow, at 320 px).

/** Text that sticks out of the window, or that a box cuts off which hides what does not fit. */
const lostIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { clientWidth: width, scrollWidth } = document.documentElement;
    const isHidden = (element: Element): boolean => {
      const { clipPath, position } = getComputedStyle(element);
      return !element.checkVisibility() || (clipPath !== "none" && position === "absolute");
    };
    const above = (element: Element | null): readonly Element[] =>
      element ? [element, ...above(element.parentElement)] : [];
    const lost = (text: Text): string | null => {
      const boxes = above(text.parentElement);
      if (!text.data.trim() || boxes.some((box) => isHidden(box) || box.tagName === "svg")) return null;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, top, bottom } = range.getBoundingClientRect();
      const box = boxes.find((element) => getComputedStyle(element).overflowX !== "visible");
      if (!box || box === document.documentElement || box === document.body)
        return right > width + 1 || left < -1 ? "sticks out" : null;
      if (["auto", "scroll"].includes(getComputedStyle(box).overflowX)) return null; // it can be scrolled to
      const edge = box.getBoundingClientRect();
      const isCut =
        right > edge.right + 2 || left < edge.left - 2 || bottom > edge.bottom + 2 || top < edge.top - 2;
      return isCut ? "is cut off" : null;
    };
    const found: string[] = scrollWidth > width ? [`the page is ${scrollWidth} px wide`] : [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const how = node instanceof Text ? lost(node) : null;
      if (how) found.push(`“${node.nodeValue}” in ${node.parentElement?.className} ${how}`);
    }
    return found;
  });

/** Every place, each with what of it is lost. */
async function lostAt(page: Page, addresses: readonly string[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const address of addresses) {
    await step(page, address);
    found.push(...(await lostIn(page)).map((lost) => `${address}: ${lost}`));
  }
  return found;
}

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
