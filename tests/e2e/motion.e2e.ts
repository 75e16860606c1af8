import type { Locator, Page } from "@playwright/test";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U13, and the look's own figures: a changed pick slides in for 180 ms, a row that was solved anew is
// washed for 600 ms, what falls out of a search shrinks for 120 ms, a row opens for 160 ms. Source of what reduced
// motion asks for: Media Queries 5, prefers-reduced-motion.

/** Something that moved: what of it, for how long, and whether it was over when watching ended. */
type Moved = Readonly<{ what: string; lasts: number; isOver: boolean }>;

declare global {
  /** Everything that has moved on the page since it was watched. */
  var moved: Set<Animation>;
}

/** From here on every frame of the page is looked at. */
const watchMotion = (page: Page): Promise<void> =>
  page.evaluate(() => {
    globalThis.moved = new Set();
    const look = () => {
      for (const animation of document.getAnimations()) globalThis.moved.add(animation);
      requestAnimationFrame(look);
    };
    look();
  });

/** What has moved since, once a while more has gone by. */
async function movedBy(page: Page, afterMs: number): Promise<readonly Moved[]> {
  await page.waitForTimeout(afterMs);
  return page.evaluate(() => {
    const named = (animation: Animation): string =>
      animation instanceof CSSAnimation
        ? animation.animationName.replace(/^_|_[^_]+_\d+$/g, "") // as the style sheet of its part calls it
        : animation instanceof CSSTransition
          ? animation.transitionProperty
          : "by script";
    return [...globalThis.moved].map((animation) => ({
      what: named(animation),
      lasts: Number(animation.effect?.getComputedTiming().duration),
      isOver: animation.playState === "finished" || animation.playState === "idle",
    }));
  });
}

/** Presses an element, and tells what moved for a while after. */
async function pressAndWatch(target: Locator, forMs: number): Promise<readonly Moved[]> {
  await watchMotion(target.page());
  await target.click();
  return movedBy(target.page(), forMs);
}

/** Each motion once. */
const kinds = (moved: readonly Moved[]): ReadonlyMap<string, number> =>
  new Map(moved.map(({ what, lasts }) => [what, lasts]));

const standIns = "/remakes/rm-low-light/stand-ins";
const swap = (page: Page) => page.getByRole("button", { name: /^swap/ }).first();
const row = (page: Page) =>
  page
    .getByRole("listitem")
    .filter({ has: swap(page) })
    .first();
const why = (page: Page) =>
  row(page)
    .getByRole("button", { name: /^why\?/ })
    .first();

test.describe("with motion", () => {
  test.use({ contextOptions: { reducedMotion: "no-preference" } });

  test("a changed pick slides in for 180 ms, its row is washed, and both end", async ({ page }) => {
    await open(page, standIns);
    const moved = await pressAndWatch(swap(page), 900);
    expect(kinds(moved)).toEqual(
      new Map([
        ["arrive", 180],
        ["wash", 600],
      ]),
    );
    expect(moved.filter(({ isOver }) => !isOver)).toEqual([]);
  });

  test("the figure changes once the new half is there", async ({ page }) => {
    await open(page, standIns);
    const [before, slid, after] = await swap(page).evaluate(async (button) => {
      const line = button.closest("li");
      const told = () => line?.querySelector("[class*=nearness]")?.textContent;
      const first = told();
      if (button instanceof HTMLElement) button.click();
      await new Promise((done) => setTimeout(done, 60));
      const still = told();
      await new Promise((done) => setTimeout(done, 400));
      return [first, still, told()];
    });
    expect(slid).toBe(before);
    expect(after).not.toBe(before);
  });

  test("a row opens for 160 ms", async ({ page }) => {
    await open(page, standIns);
    expect(kinds(await pressAndWatch(why(page), 400))).toEqual(
      new Map([
        ["grow", 160],
        ["cut", 160],
      ]),
    );
  });

  test("what falls out of a search shrinks for 120 ms", async ({ page }) => {
    await open(page, "/stash");
    const moved = await writeAndWatch(page);
    expect(kinds(moved)).toEqual(
      new Map([
        ["transform", 120],
        ["opacity", 120],
      ]),
    );
  });
});

/** Writes into the search over the stash, and tells what moved until something had fallen out, and after. */
async function writeAndWatch(page: Page): Promise<readonly Moved[]> {
  await watchMotion(page);
  await page.getByRole("searchbox", { name: "Search the stash" }).fill("gouache");
  await page.locator("li[aria-hidden=true]").first().waitFor({ state: "attached" });
  return movedBy(page, 300);
}

test.describe("with motion reduced", () => {
  test.use({ contextOptions: { reducedMotion: "reduce" } });

  test("a changed pick is there at once, and its wash stays for 1.5 s and goes", async ({ page }) => {
    await open(page, standIns);
    const grid = row(page).locator("[class*=grid]").first();
    const bare = await grid.evaluate((one) => getComputedStyle(one).backgroundColor);
    const moved = pressAndWatch(swap(page), 800);
    await expect(grid).not.toHaveCSS("background-color", bare);
    expect(await moved).toEqual([]);
    await expect(grid, "it stays for longer than the fading one").not.toHaveCSS("background-color", bare);
    await expect(grid).toHaveCSS("background-color", bare, { timeout: 1_500 });
  });

  test("nothing moves where a row opens", async ({ page }) => {
    await open(page, standIns);
    expect(await pressAndWatch(why(page), 300)).toEqual([]);
    await expect(row(page).getByRole("button", { expanded: true })).toBeVisible();
  });

  test("nothing moves while searching", async ({ page }) => {
    await open(page, "/stash");
    expect(await writeAndWatch(page)).toEqual([]);
  });
});
