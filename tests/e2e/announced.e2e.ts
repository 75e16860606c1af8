import type { Page } from "@playwright/test";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U6: each async result is announced once. Source: WAI-ARIA 1.2, live regions: a polite region is read
// when its text changes, and an alert when it comes.

declare global {
  /** Every text that a live region came to, in order. */
  var said: string[];
}

/** From here on everything that would be read out by itself is written down. */
const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const live = "[role=status], [role=alert], [role=log], [aria-live]:not([aria-live=off])";
    const last = new Map<Element, string>();
    const textOf = (region: Element) => {
      const copy = region.cloneNode(true) as Element; // a clone of an element is one
      for (const button of copy.querySelectorAll("button, [aria-hidden=true]")) button.remove();
      return copy.textContent?.trim() ?? "";
    };
    globalThis.said = [];
    const look = (isFirst: boolean) => {
      for (const region of document.querySelectorAll(live)) {
        const text = textOf(region);
        if (!isFirst && text !== "" && text !== (last.get(region) ?? "")) globalThis.said.push(text);
        last.set(region, text);
      }
    };
    look(true);
    new MutationObserver(() => look(false)).observe(document.body, {
      childList: true,
      characterData: true,
      subtree: true,
      attributes: true,
    });
  });

/** What has been said since it was asked last. A while must pass in which nothing more is said. */
async function saidSince(page: Page): Promise<readonly string[]> {
  await page.waitForTimeout(350);
  return page.evaluate(() => globalThis.said.splice(0));
}

test("each act on a kit and on the stash is said once, and so is its undoing", async ({ page }) => {
  await open(page, "/kits/sp-2026-02/contents");
  await listen(page);
  const entry = page.getByLabel(/^Line \d+, as you would say it$/);
  await entry.fill("2 gouache tubes moss #6b7d3a 15 ml");
  await entry.press("Enter");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^Line \d+ added: Gouache, moss$/)]);

  await page.getByRole("button", { name: /^Add line/ }).focus(); // out of the field, which has its own undo
  await page.keyboard.press("Control+z");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^Undone: /)]);
  await page.keyboard.press("Control+Shift+z");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^Done again: /)]);

  await open(page, "/stash");
  await page.getByRole("button", { name: "Add", exact: true }).click();
  await page.getByLabel("What you have, as you would say it").fill("soft pastel kelp");
  await listen(page);
  await page.keyboard.press("Enter");
  expect(await saidSince(page)).toEqual(["Soft pastel, kelp is in the stash"]);
});

test("each act on a remake is said once", async ({ page }) => {
  await open(page, "/remakes/rm-low-light/stand-ins");
  await listen(page);
  await page.getByRole("button", { name: /^swap/ }).first().click();
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^Line \d+ now has .+\.$/)]);
  await page.keyboard.press("Control+z");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^Undone: /)]);
  await page
    .getByRole("button", { name: /^mark dried out/ })
    .first()
    .click();
  expect(await saidSince(page)).toEqual([expect.stringMatching(/ dried out\./)]);

  await open(page, "/remakes/rm-low-light/write-up");
  await listen(page);
  await page.getByRole("button", { name: "Publish: keep this version" }).click();
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^The version of .+ is kept\.$/)]);
});

test("how much is found is said once it is", async ({ page }) => {
  await open(page, "/");
  await listen(page);
  await page.getByRole("combobox", { name: "Find a kit, a supply, an act" }).fill("moss");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/^\d+ found$/)]);
  await open(page, "/stash");
  await listen(page);
  await page.getByRole("searchbox", { name: "Search the stash" }).fill("gouache");
  expect(await saidSince(page)).toEqual([expect.stringMatching(/\d/)]);
});
