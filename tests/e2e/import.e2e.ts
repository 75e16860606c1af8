import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { xlsxOf } from "../unit/workers/zipped.ts";
import { bookIn, rowsIn } from "./kept/rows.ts";
import { seenIn, spyOnTransactions } from "./kept/spies.ts";
import { lostIn } from "./lost.ts";
import { open } from "./places.ts";
import { expect, test } from "./watched.ts";

const address = "/stash?bring=list";
const heads = "Brand,Name,Type,Colour,No.,Qty,Where,Price (SEK),Bought";
const things = [
  'Kvist,Moss,"gouache tube 15 ml",moss,12,2,blue tin,"39,50",2024-11-02',
  "Kvist,Brick,gouache tube 15 ml,brick,13,1,blue tin,39,2024-11-02",
  "Kvist,Dusk,gouache tube 15 ml,dusk,14,lots,blue tin,39,someday",
  "Total,,,,,4,,,",
];
const csv = Buffer.from([heads, ...things].join("\r\n"));
const picker = (page: Page) => page.getByLabel(/^Choose (a|another) file$/);
const choose = (page: Page, name: string, buffer: Buffer | Uint8Array) =>
  picker(page).setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(buffer) });
const addAll = (page: Page) => page.getByRole("button", { name: /^Add [\d,]+ things?$/ });
const counts = (page: Page) => page.getByText(/^[\d,]+ to add/);
const stashIn = async (page: Page) => bookIn(await rowsIn(page)).stash ?? [];

test("a CSV file is shown as it is understood, added in one act, and taken back by one undo", async ({
  page,
  context,
}) => {
  await spyOnTransactions(context);
  await open(page, address);
  await choose(page, "list.csv", csv);
  await expect(counts(page)).toHaveText("3 to add and 1 not understood");
  await expect(page.getByRole("row", { name: /^Moss/ }).first()).toContainText("2 of them, Kvist, no. 12");
  await expect(page.getByText("“lots” was not understood; it is kept in the note").first()).toBeVisible();
  expect((await seenIn(page)).filter(({ mode }) => mode === "readwrite")).toEqual([]);

  await addAll(page).click();
  await expect(page.getByRole("heading", { name: "3 things brought in" })).toBeFocused();
  expect((await seenIn(page)).filter(({ mode }) => mode === "readwrite")).toHaveLength(1);
  await page.getByRole("link", { name: "See the stash" }).click();
  await page.getByRole("link", { name: "As a list" }).click();
  await expect(page.getByRole("link", { name: /Moss/ })).toBeVisible();

  await page.reload();
  await page.locator("h1:visible").waitFor();
  await page.keyboard.press("Control+z");
  await expect(page.getByText("Nothing in the stash yet")).toBeVisible();
});

test("the same list twice adds nothing twice, also out of another kind of file", async ({ page }) => {
  await open(page, address);
  await choose(page, "list.csv", csv);
  await addAll(page).click();
  await page.getByRole("button", { name: "Bring in another list" }).click();
  await choose(page, "list.csv", csv);
  await expect(counts(page)).toHaveText("0 to add, 3 already here and 1 not understood");
  await expect(page.getByText("Read as you read this kind of list last time.")).toBeVisible();
  await addAll(page).click({ force: true });
  await expect(page.getByText("There is nothing to add")).toHaveCount(0);
  await expect(addAll(page)).toHaveAttribute("aria-disabled", "true");

  const rows = things.map((line) => line.replaceAll('"', "").replace("39,50", "39.50").split(","));
  const cells = [heads.split(","), ...rows].map(
    (row) => `<row>${row.map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`).join("")}</row>`,
  );
  await choose(page, "list.xlsx", xlsxOf(cells.join("")));
  await expect(counts(page)).toHaveText("0 to add, 3 already here and 1 not understood");
});

test("spreadsheets of other programs are read, sheet by sheet", async ({ page }) => {
  await open(page, address);
  for (const [name, said] of [
    ["xlsxwriter.xlsx", "6 to add"],
    ["openpyxl.xlsx", "6 to add"],
    ["by-hand.ods", "6 to add"],
    ["windows-1252-semicolon.csv", "6 to add"],
    ["utf-16-tab.tsv", "6 to add"],
    // Written by LibreOffice 7.4, with a title above and a row of sums below.
    ["libreoffice.xlsx", "6 to add and 1 not understood"],
    ["libreoffice.ods", "6 to add and 1 not understood"],
    ["libreoffice-windows-1252.csv", "6 to add and 1 not understood"],
  ] as const) {
    await choose(page, name, await readFile(`fixtures/lists/${name}`));
    await expect(page.getByRole("heading", { name })).toBeVisible();
    await expect(counts(page)).toHaveText(said);
    await expect(page.getByLabel("Färg is")).toHaveValue("colour");
  }
});

test("what a column is can be said otherwise, and is remembered", async ({ page }) => {
  await open(page, address);
  const list = Buffer.from("Thingamy,Etc\nMoss,blue tin\nBrick,red tin\n");
  await choose(page, "odd.csv", list);
  await page.getByLabel("The heads stand in").selectOption("row 1");
  await page.getByLabel("Thingamy is").selectOption("name");
  await page.getByLabel("Etc is").selectOption("where it lives");
  await page.getByLabel("These are").selectOption("marker");
  await expect(page.getByRole("row", { name: /^Moss/ })).toContainText("blue tin");
  await addAll(page).click();
  await expect(page.getByText("2 things brought in")).toBeVisible();
  expect((await stashIn(page)).map(({ place }) => place)).toEqual(["blue tin", "red tin"]);
  await page.getByRole("button", { name: "Bring in another list" }).click();
  await choose(page, "odd.csv", Buffer.from("Thingamy,Etc\nDusk,green tin\n"));
  await page.getByLabel("The heads stand in").selectOption("row 1");
  await expect(page.getByLabel("Etc is")).toHaveValue("place");
});

test("a doubtful row can be taken out, and what is not added is saved with its reasons", async ({ page }) => {
  await open(page, address);
  await choose(page, "list.csv", csv);
  await page.getByLabel(/Add Dusk, row 4/).uncheck();
  await expect(counts(page)).toHaveText("2 to add and 1 not understood");
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the 2 rows not added" }).click();
  const saved = await readFile(await (await download).path(), "utf8");
  expect(saved.split("\r\n")).toEqual([
    "Why it was not added,Brand,Name,Type,Colour,No.,Qty,Where,Price (SEK),Bought",
    "left out by you,Kvist,Dusk,gouache tube 15 ml,dusk,14,lots,blue tin,39,someday",
    '"a sum of the list, no thing",Total,,,,,4,,,',
    "",
  ]);
  await addAll(page).click();
  await expect(page.getByText("2 things brought in")).toBeVisible();
});

test("cells pasted where one thing is written become a list", async ({ page }) => {
  await open(page, "/stash");
  const field = page.getByLabel("What you have, as you would say it");
  await field.focus();
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData("text/plain", "Name\tType\tQty\nMoss\tmarker\t2\nBrick\tmarker\t1\n");
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await expect(page.getByRole("heading", { name: "what you pasted" })).toBeVisible();
  await expect(counts(page)).toHaveText("2 to add");
});

test("a list can be pasted, and is found from anywhere", async ({ page }) => {
  await open(page, "/");
  await page.getByRole("combobox", { name: "Find a kit" }).fill("spreadsheet");
  await page.getByRole("option", { name: /Bring in a list/ }).click();
  await expect(page.getByRole("heading", { name: "Bring in a list" })).toBeVisible();
  await page.getByLabel("Or paste it here").fill("2 gouache tubes moss 15 ml\nkneaded eraser");
  await page.getByRole("button", { name: "Read it" }).click();
  await expect(counts(page)).toHaveText("2 to add");
  await expect(page.getByText("Gouache, moss").first()).toBeVisible();
});

const bomb = () => xlsxOf("", [{ name: "xl/worksheets/sheet2.xml", content: new Uint8Array(30_000_000) }]);
const refused: readonly (readonly [string, () => Uint8Array, RegExp])[] = [
  ["bomb.xlsx", bomb, /far larger than it looks/],
  ["list.csv", () => Buffer.from("%PDF-1.7"), /It is a PDF/],
  ["rows.csv", () => Buffer.from("Name,Qty\n".repeat(150_000)), /more than 100,000 rows/],
  ["cut.xlsx", () => xlsxOf("").slice(0, 300), /It is damaged/],
];
test("what is no list is refused within two seconds, with its reason, and nothing changes", async ({
  page,
  context,
}) => {
  await spyOnTransactions(context);
  await open(page, address);
  for (const [name, make, reason] of refused) {
    await choose(page, name, make());
    const start = Date.now();
    await expect(page.getByText(`${name} was not read`)).toBeVisible({ timeout: 2_000 });
    expect(Date.now() - start).toBeLessThan(2_000);
    await expect(page.getByRole("alert")).toContainText(reason);
  }
  expect((await seenIn(page)).filter(({ mode }) => mode === "readwrite")).toEqual([]);
});

const many = (count: number) =>
  Buffer.from(
    `${heads}\n${Array.from({ length: count }, (_, at) => `Kvist,Thing ${at},alcohol marker,moss,${at},1,tin ${at % 40},39,2024-11-02`).join("\n")}`,
  );

test("10,000 rows are brought in without holding up the page", async ({ page }) => {
  await page.addInitScript(() => {
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longest = Math.max(longest, duration);
    }).observe({ type: "longtask" });
    globalThis.longest = 0;
  });
  await open(page, address);
  await page.evaluate(() => {
    longest = 0;
  });
  const start = Date.now();
  await choose(page, "many.csv", many(10_000));
  await addAll(page).click();
  await expect(page.getByText("10,000 things brought in")).toBeVisible({ timeout: 20_000 });
  test.info().annotations.push({
    type: "measured",
    description: `${Date.now() - start} ms, longest task ${Math.round(await page.evaluate(() => longest))} ms`,
  });
  expect(await stashIn(page)).toHaveLength(10_000);
});

test("reading can be cancelled, and nothing of it is left", async ({ page }) => {
  await open(page, address);
  await choose(page, "many.csv", many(60_000));
  await expect(page.getByRole("progressbar")).toBeVisible({ timeout: 10_000 });
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByText("many.csv was not read. Nothing was added.")).toBeVisible();
  await choose(page, "list.csv", csv);
  await expect(counts(page)).toHaveText("3 to add and 1 not understood");
});

test("all of it can be reached by keyboard, read out, and seen on a narrow screen", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page, address);
  await choose(page, "list.csv", csv);
  await addAll(page).waitFor();
  expect(await lostIn(page)).toEqual([]);
  expect(
    (await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [id, nodes[0]?.html]),
  ).toEqual([]);
  await page.setViewportSize({ width: 1440, height: 900 });
  expect(
    (await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [id, nodes[0]?.html]),
  ).toEqual([]);
  await page.getByLabel("Qty is").focus();
  await page.keyboard.press("Tab");
  await expect(page.getByLabel("Where is")).toBeFocused();
  await addAll(page).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "3 things brought in" })).toBeFocused();
});

declare global {
  /** The longest task of the page so far, in ms. */
  var longest: number;
}
