import type { Locator, Page, TestInfo } from "@playwright/test";
import { expect } from "../watched.ts";
import takenWith from "./taken-with.json" with { type: "json" };

/**
 * Letters differ by a shade between machines that run the same browser, and pixelmatch already passes over what
 * is only an edge smoothed otherwise. Half a hundredth of a picture is less than one line of text gone, moved or
 * in another colour, and more than the few pixels that smoothing leaves over.
 */
const tolerance = { maxDiffPixelRatio: 0.005, threshold: 0.2 };

const major = (version: string): number => Number.parseInt(version, 10);

/** Whether this browser paints letters as the one did that took the photographs kept beside the tests. */
const isSameKind = (page: Page): boolean =>
  process.platform === takenWith.platform &&
  major(page.context().browser()?.version() ?? "") === takenWith.chromium;

let said = false;

function sayOnce(page: Page): void {
  if (said) return;
  said = true;
  const own = `Chromium ${page.context().browser()?.version()} on ${process.platform}`;
  const kept = `Chromium ${takenWith.chromium} on ${takenWith.platform}`;
  console.log(
    isSameKind(page)
      ? `parts: photographs are compared with those taken with ${kept}`
      : `parts: ${own} paints letters otherwise than ${kept}, with which the kept photographs were taken. New ones are taken and attached, not compared; everything else is still checked.`,
  );
}

/**
 * Compares a photograph with the kept one; with another kind of browser it takes one and keeps it with the results.
 * To take them anew: `npm run e2e -- parts --update-snapshots`, and name the browser in taken-with.json.
 */
export async function photograph(of: Locator, name: string, info: TestInfo): Promise<void> {
  const page = of.page();
  sayOnce(page);
  if (isSameKind(page)) {
    await expect(of).toHaveScreenshot(`${name}.png`, tolerance);
    return;
  }
  const body = await of.screenshot({ animations: "disabled", caret: "hide" });
  expect(body.byteLength).toBeGreaterThan(200);
  await info.attach(name, { body, contentType: "image/png" });
}
