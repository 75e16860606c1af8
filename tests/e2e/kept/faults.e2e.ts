import { randomBytes } from "node:crypto";
import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { readWorkbook, type Workbook } from "../../../src/engine/workbook/index.ts";
import { open, step } from "../places.ts";
import { test as fromNothing } from "../watched.ts";
import { expect, test } from "../with-sample.ts";
import { item, keptNote, noteOf, savedWord, writeNote } from "./item.ts";
import { rowsIn } from "./rows.ts";
import { letWritesFail } from "./spies.ts";

// Quality bar D5.

/** Clicks what saves a copy, and reads the file as any restore would. */
async function savedCopy(page: Page): Promise<Workbook> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a copy now" }).click(),
  ]);
  const reading = readWorkbook(await readFile(await download.path(), "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.workbook;
}

const cases = [
  { as: "QuotaExceededError", says: "There is no room left to keep this change." },
  { as: "UnknownError", says: "The browser broke off before the change was kept." },
  { as: "abort", says: "The browser broke off before the change was kept." },
] as const;

for (const { as, says } of cases)
  for (const lasting of [false, true])
    test(`${as}${lasting ? ", time and again," : ""} is said, keeps what was typed and offers a copy`, async ({
      page,
      context,
    }) => {
      await letWritesFail(context);
      await open(page, item);
      await page.evaluate(({ as, left }) => Object.assign(failing, { as, left }), {
        as,
        left: lasting ? 1_000 : 1,
      });
      await writeNote(page, "typed just now");
      await expect(page.getByText(says)).toBeVisible();
      await expect(savedWord(page)).toHaveText("Not saved");
      await expect(noteOf(page)).toHaveValue("typed just now");
      expect(keptNote(await rowsIn(page))).toBeNull();

      const copy = await savedCopy(page);
      expect(copy.stash?.find(({ id }) => id === "st-001")?.note).toBe("typed just now");

      const again = page.getByRole("button", { name: "Try again" });
      if (lasting) {
        await again.click();
        await expect(page.getByText(says)).toBeVisible();
        await expect(savedWord(page)).toHaveText("Not saved");
        await page.evaluate(() => Object.assign(failing, { left: 0 }));
      }
      await again.click();
      await expect(savedWord(page)).toHaveText(/^Saved/);
      await expect(page.getByText(says)).toBeHidden();
      await open(page, item);
      await expect(noteOf(page)).toHaveValue("typed just now");
    });

/** Text that no compression makes smaller. */
const noise = (bytes: number): string => randomBytes(bytes).toString("base64");

// Quality bar D6, for one size: here the browser itself runs out of room.
fromNothing(
  "a disk that is really full leaves everything readable, and a copy can be made",
  async ({ page, context, baseURL }) => {
    const { origin } = new URL(baseURL ?? "");
    const browser = await context.newCDPSession(page);
    await browser.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 2_000_000 });
    await open(page, "/");
    await page.getByRole("button", { name: "Try the sample" }).click();
    await expect(page.getByText("This is the sample")).toBeVisible();
    await step(page, item);
    const full = page.getByText("There is no room left to keep this change.");
    let text = "";
    for (let notes = 1; notes <= 30 && !(await full.isVisible()); notes += 1) {
      text = noise(75_000);
      await writeNote(page, text);
      await expect(savedWord(page)).toHaveText(/^(Saved|Not saved)/);
    }
    await expect(full).toBeVisible();
    await expect(noteOf(page)).toHaveValue(text);
    const copy = await savedCopy(page);
    expect(copy.stash).toHaveLength(145);
    expect(copy.stash?.find(({ id }) => id === "st-001")?.note).toBe(text);
    const kept = keptNote(await rowsIn(page));
    expect(kept).not.toBe(text);
    await open(page, item);
    await expect(noteOf(page)).toHaveValue(kept ?? "");
  },
);
