import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { fewOf, open, placesOf, plainPlaces, step } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U5. Source: WCAG 2.2, 2.5.8 (24 px, but for links within a sentence) and 2.5.5 (44 px, kept on touch).

/** What can be pressed and is smaller than it has to be. A control inside a label is as large as the label. */
const smallIn = (page: Page, least: number): Promise<readonly string[]> =>
  page.evaluate((leastPx) => {
    const targets = document.querySelectorAll<HTMLElement>(
      "button, a[href], input, select, textarea, summary, [role=tab], [role=option], [tabindex='0']",
    );
    const ruleOut = (target: Element): boolean => {
      const { clipPath, position } = getComputedStyle(target);
      const isHidden = !target.checkVisibility() || (clipPath !== "none" && position === "absolute");
      return isHidden || target.closest("[hidden], [inert]") !== null;
    };
    /** Within a sentence: an inline box with other words before or after it. */
    const isInline = (target: Element): boolean => {
      const sentence = target.closest("p, dd")?.textContent?.trim() ?? "";
      const own = target.textContent?.trim() ?? "";
      return getComputedStyle(target).display.startsWith("inline") && sentence.length > own.length;
    };
    return [...targets].flatMap((target) => {
      if (ruleOut(target)) return [];
      if (target.matches("a, button") && isInline(target)) return [];
      const label = target.matches("input[type=radio], input[type=checkbox]")
        ? target.closest("label")
        : null;
      const { width, height } = (label ?? target).getBoundingClientRect();
      if (width >= leastPx - 0.5 && height >= leastPx - 0.5) return [];
      const name = target.getAttribute("aria-label") ?? target.textContent?.trim().slice(0, 40);
      return [
        `${target.tagName} “${name}” ${target.className} is ${width.toFixed(1)} × ${height.toFixed(1)}`,
      ];
    });
  }, least);

/** Opens what a few buttons of the page open, so that what is behind them counts too; tells how many it opened. */
const openSome = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const closed = "main button[aria-expanded=false]:not([popovertarget])";
    for (const _ of [1, 2, 3]) {
      const buttons = [...document.querySelectorAll<HTMLElement>(closed)].filter((one) =>
        one.checkVisibility(),
      );
      buttons[Math.floor(buttons.length / 2)]?.click();
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    }
    return document.querySelectorAll("main button[aria-expanded=true]").length;
  });

async function smallAt(page: Page, addresses: readonly string[], least: number) {
  const found = new Set<string>();
  let opened = 0;
  for (const address of addresses) {
    await step(page, address);
    opened += await openSome(page);
    for (const small of await smallIn(page, least)) found.add(`${address}: ${small}`);
  }
  return { small: [...found], opened };
}

const addresses = placesOf(fewOf(sampleBook()));

const looks = [
  { name: "by pointer at 1440", least: 24, use: { viewport: { width: 1440, height: 900 } } },
  {
    name: "by touch at 390",
    least: 44,
    use: { viewport: { width: 390, height: 800 }, hasTouch: true, isMobile: true },
  },
] as const;

for (const { name, least, use } of looks)
  test.describe(name, () => {
    test.use(use);

    test(`everything that can be pressed is at least ${least} px`, async ({ page }) => {
      await open(page, "/");
      const { small, opened } = await smallAt(page, addresses, least);
      expect(small).toEqual([]);
      expect(opened).toBeGreaterThan(20);
    });

    atFirst(`so it is in an empty notebook, at least ${least} px`, async ({ page }) => {
      await page.setViewportSize(use.viewport);
      await open(page, "/");
      expect((await smallAt(page, plainPlaces, least)).small).toEqual([]);
    });
  });
