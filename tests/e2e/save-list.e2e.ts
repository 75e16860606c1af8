import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { saidBy } from "../../src/engine/intake/index.ts";
import { bookIn, rowsIn } from "./kept/rows.ts";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

const saved = async (page: Page, kind: string) => {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: `Save as ${kind}` }).click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
};

const bring = async (page: Page, { name, bytes }: Awaited<ReturnType<typeof saved>>) => {
  await open(page, "/stash?bring=list");
  const picker = page.getByLabel(/^Choose (a|another) file$/);
  await picker.setInputFiles({ name, mimeType: "application/octet-stream", buffer: bytes });
};

/** Every thing by its id, without what leads to kits. */
const stashIn = async (page: Page) =>
  ((await bookIn(await rowsIn(page))).stash ?? []).map(({ fromKit: _, ...item }) => saidBy(item)).toSorted();

test("the stash is saved as a list, wiped, and comes back just as it was; again it adds nothing", async ({
  page,
}) => {
  await open(page, "/stash");
  await page.getByRole("link", { name: "Save the list" }).click();
  const files = [await saved(page, "XLSX"), await saved(page, "ODS"), await saved(page, "CSV")];
  expect(files.map(({ name }) => name)).toEqual(
    ["xlsx", "ods", "csv"].map((kind) =>
      expect.stringMatching(new RegExp(`^stash-\\d{4}-\\d\\d-\\d\\d\\.${kind}$`)),
    ),
  );
  await expect(page.getByText(/^Saved stash-.*csv: 145 things\.$/)).toBeVisible();
  const before = await stashIn(page);

  await open(page, "/keep-safe");
  await page.getByRole("button", { name: "Remove everything" }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Remove without a copy" }).click();
  await expect(page.getByText("Everything is removed")).toBeVisible();
  const [xlsx, ods, csv] = files;
  if (!xlsx || !ods || !csv) throw new Error("three files were saved");
  await bring(page, ods);
  await expect(page.getByText("Saved here: each thing is read exactly as it was.")).toBeVisible();
  await page.getByRole("button", { name: "Add 145 things" }).click();
  await expect(page.getByRole("heading", { name: "145 things brought in" })).toBeVisible();
  expect(await stashIn(page)).toEqual(before);
  for (const file of [xlsx, csv]) {
    await bring(page, file);
    await expect(page.getByText("145 already here")).toBeVisible();
  }
});

test("what was found is saved alone, from the search field too", async ({ page }) => {
  await open(page, "/stash?q=gouache");
  await page.getByRole("link", { name: "Save the list" }).click();
  await expect(page.getByRole("radio", { name: /^what the search found: \d+ things$/ })).toBeChecked();
  const { bytes } = await saved(page, "CSV");
  const names = bytes.toString("utf8").split("\r\n").slice(1, -1);
  expect(names.length).toBeGreaterThan(1);
  expect(names.filter((row) => !/gouache/i.test(row))).toEqual([]);
  await page.getByRole("combobox", { name: "Find a kit" }).fill("xlsx");
  await expect(page.getByRole("option", { name: /Save the stash as a list/ })).toBeVisible();
});
