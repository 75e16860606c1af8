import { open, step } from "../places.ts";
import { expect, test } from "../with-sample.ts";
import { item, keepNote, keptNote, noteOf, savedWord, writeNote } from "./item.ts";
import { actsIn, rowsIn } from "./rows.ts";
import { seenIn, spyOnTransactions } from "./spies.ts";

// Quality bar D1.
test("goes to the disk by strict transactions, rows and journal entry together", async ({
  page,
  context,
}) => {
  await spyOnTransactions(context);
  await open(page, item);
  await writeNote(page, "squeezed from the end");
  await expect(savedWord(page)).toHaveText(/^Saved/);
  await page.keyboard.press("Control+z");
  await expect(noteOf(page)).toHaveValue("");
  await page.keyboard.press("Control+Shift+z");
  await expect(noteOf(page)).toHaveValue("squeezed from the end");
  await page.getByRole("button", { name: "Another like this" }).click();
  await page.getByRole("button", { name: "Remove from the stash" }).click();
  await step(page, "/keep-safe");
  await page.getByRole("button", { name: "Remove everything" }).click();
  await page.getByRole("button", { name: "Remove without a copy" }).click();
  await expect(page.getByText("Everything is removed")).toBeVisible();

  const writing = (await seenIn(page)).filter(({ mode }) => mode === "readwrite");
  expect(writing.map(({ durability }) => durability)).toEqual(writing.map(() => "strict"));
  expect(writing.map(({ wrote }) => [...new Set(wrote)].toSorted())).toEqual([
    ...["note", "undo", "redo", "another", "removed"].map(() => ["chunks", "journal", "meta"]),
    ["chunks", "journal", "large", "meta", "snapshots"],
  ]);
  const [, ...acts] = actsIn(await rowsIn(page)); // the first loaded the sample, before this page
  expect(acts).toHaveLength(writing.length);
});

test("is called saved only once it is on the disk", async ({ page, context }) => {
  await spyOnTransactions(context);
  await open(page, item);
  await page.evaluate(() => {
    globalThis.holdsBack = true;
  });
  await writeNote(page, "nearly there");
  await page.waitForFunction(() => heldBack.length > 0);
  expect(keptNote(await rowsIn(page))).toBe("nearly there");
  await expect(savedWord(page)).toHaveText("Saving");
  await page.evaluate(() => {
    globalThis.holdsBack = false;
    for (const release of heldBack) release();
  });
  await expect(savedWord(page)).toHaveText(/^Saved \d/);
});

// Quality bar D12.
test("can be taken back and done again after a reload", async ({ page }) => {
  await open(page, item);
  await keepNote(page, "first");
  await keepNote(page, "second");
  await open(page, item);
  await expect(noteOf(page)).toHaveValue("second");
  await page.keyboard.press("Control+z");
  await expect(noteOf(page)).toHaveValue("first"); // undo is kept before it is shown
  await open(page, item);
  await page.keyboard.press("Control+z");
  await expect(noteOf(page)).toHaveValue("");
  await open(page, item);
  await page.keyboard.press("Control+Shift+z");
  await page.keyboard.press("Control+Shift+z");
  await expect(noteOf(page)).toHaveValue("second");
  await open(page, item);
  await expect(noteOf(page)).toHaveValue("second");
});

test("shows in another tab at once, and both tabs' edits stand", async ({ page, context }) => {
  const other = await context.newPage();
  await open(page, item);
  await open(other, item);
  await writeNote(page, "from one tab");
  await expect(noteOf(other)).toHaveValue("from one tab");
  await other.getByRole("textbox", { name: "Tags" }).fill("landscape, hedge");
  await other.getByRole("textbox", { name: "Tags" }).blur();
  await expect(page.getByRole("textbox", { name: "Tags" })).toHaveValue("landscape, hedge");
  await other.keyboard.press("Control+z");
  await other.keyboard.press("Control+z");
  await expect(noteOf(page)).toHaveValue("");
  await expect(page.getByRole("textbox", { name: "Tags" })).toHaveValue("landscape");
});

test("stands when two tabs write in the same moment, each unaware of the other", async ({
  page,
  context,
}) => {
  const other = await context.newPage();
  await open(page, item);
  await open(other, item);
  await noteOf(page).fill("from one tab");
  await other.getByRole("textbox", { name: "Tags" }).fill("landscape, hedge");
  await Promise.all([noteOf(page).blur(), other.getByRole("textbox", { name: "Tags" }).blur()]);
  for (const tab of [page, other]) {
    await expect(noteOf(tab)).toHaveValue("from one tab");
    await expect(tab.getByRole("textbox", { name: "Tags" })).toHaveValue("landscape, hedge");
  }
  expect(actsIn(await rowsIn(page))).toHaveLength(3);
});
