import { readFile } from "node:fs/promises";
import { canonicalJson, readWorkbook, type Workbook } from "../../../src/engine/workbook/index.ts";
import { sampleBook } from "../../unit/sample.ts";
import { open } from "../places.ts";
import { expect, test } from "../with-sample.ts";
import { item, keepNote } from "./item.ts";
import { bookIn, rowsIn } from "./rows.ts";

/** A copy's text as a workbook, without the stamp that a copy has over one. */
function plain(text: string): Workbook {
  const reading = readWorkbook(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return { ...reading.workbook, backup: undefined };
}

const note = "a note of my own: “ß” \u2028 🎨";

// Quality bar D7 and D8.
test("a copy brings back everything after everything is removed, to the letter", async ({ page }) => {
  await open(page, item);
  await keepNote(page, note);
  await open(page, "/keep-safe");
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy", exact: true }).click();
  const download = await saving;
  const path = await download.path();
  const copy = plain(await readFile(path, "utf8"));
  const mine = sampleBook().stash?.map((own) => (own.id === "st-001" ? { ...own, note } : own));
  expect(canonicalJson(copy)).toBe(canonicalJson({ ...sampleBook(), sample: true, stash: mine }));

  await page.getByRole("button", { name: "Remove everything" }).click();
  await page.getByRole("button", { name: "Remove without a copy" }).click();
  await expect(page.getByText("Everything is removed")).toBeVisible();
  expect(bookIn(await rowsIn(page)).stash ?? []).toEqual([]);

  await page.getByLabel("Choose a copy").setInputFiles(path);
  await expect(page.getByRole("dialog")).toContainText("145");
  expect(bookIn(await rowsIn(page)).stash ?? []).toEqual([]); // only a look so far
  await page.getByRole("button", { name: "Restore it" }).click();
  await expect(page.getByText(/^The copy is restored/)).toBeVisible();
  expect(canonicalJson(bookIn(await rowsIn(page)))).toBe(canonicalJson(copy));

  await page.reload();
  const [again] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a copy", exact: true }).click(),
  ]);
  expect(canonicalJson(plain(await readFile(await again.path(), "utf8")))).toBe(canonicalJson(copy));

  await page.keyboard.press("Control+z");
  await expect.poll(async () => bookIn(await rowsIn(page)).stash ?? []).toEqual([]);
  await page.keyboard.press("Control+z");
  await expect.poll(async () => canonicalJson(bookIn(await rowsIn(page)))).toBe(canonicalJson(copy));
});
