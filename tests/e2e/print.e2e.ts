import type { Page } from "@playwright/test";
import { wcagContrast } from "culori";
import { open } from "./places.ts";
import { markRows, seenIn } from "./print/looked.ts";
import { linesOf, type Sheet, sheetsOf } from "./print/paper.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U13: black on white, table heads repeat, no cut rows, A4 and Letter.

/** Where each sheet is, what stands on it, and how many rows it has at the least. */
const sheets = [
  {
    name: "Contents",
    at: "/kits/sp-2026-04/contents",
    says: ["Contents", "Gouache, moss", "EUR 24.00"],
    rows: 11,
  },
  { name: "Worth", at: "/kits/sp-2026-04/worth", says: ["Worth", "432.36", "Together"], rows: 15 },
  // The list of what to fetch is part of this sheet.
  {
    name: "Stand-ins",
    at: "/remakes/rm-low-light/stand-ins",
    says: ["Stand-ins", "90", "Fetch them", "Flat shelf"],
    rows: 16,
  },
  {
    name: "Write-up",
    at: "/remakes/rm-slow-thaw/write-up",
    says: ["Write-up", "WHAT WAS IN IT, AND WHAT STOOD IN"],
    rows: 0,
  },
  {
    name: "the stash as a list",
    at: "/stash?view=list",
    says: ["Acrylic, bottle green", "Watercolour, tormentil"],
    rows: 145,
  },
  {
    name: "the stash by colour",
    at: "/stash",
    says: ["Gouache, haze", "Violets", "Gold leaf, loose"],
    rows: 145,
  },
  {
    name: "the list of the stash",
    at: "/stash?print=list",
    says: ["Stash list", "145 things.", "blue tin", "Watercolour, tormentil"],
    rows: 145,
  },
  { name: "Markets", at: "/markets", says: ["Exchange rates", "Ljusgränd", "Parcels of my own"], rows: 20 },
] as const;

const formats = ["A4", "Letter"] as const;

/** What can only be pressed, or is the frame of the app: none of it belongs on paper. */
const chrome = [
  "Find a kit",
  "Skip to the page",
  "Keep safe",
  "why?",
  "swap",
  "dried out!",
  "Search the stash",
  "a name, a place, a colour",
  "Choose a file",
  "Saved",
];

const printed = async (page: Page, format: (typeof formats)[number]): Promise<readonly Sheet[]> =>
  sheetsOf(await page.pdf({ format }));

/** A change of media is told with the next frame; two within one frame would be no change. */
async function layOut(page: Page, media: "screen" | "print"): Promise<void> {
  await page.emulateMedia({ media });
  await page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))),
  );
}

/** Which sheets a row is on, by the marks where its cells begin and end. */
const sheetsWith = (all: readonly Sheet[], row: number): readonly number[] =>
  all.flatMap(({ pieces }, index) => {
    const words = pieces.flatMap(({ text }) => text.split(" "));
    return words.some((word) => word === `[${row}` || word === `${row}]`) ? [index] : [];
  });

for (const { name, at, says, rows } of sheets) {
  test(`${name} prints whole rows, no chrome and no pixels`, async ({ page }) => {
    await open(page, at);
    for (const format of formats) {
      const sheets = await printed(page, format);
      const lines = sheets.map(linesOf);
      const text = lines.flat().join("\n");
      for (const words of says) expect(text).toContain(words);
      for (const words of chrome) expect(text).not.toContain(words);
      expect(sheets.filter(({ images }) => images > 0)).toEqual([]);
      expect(lines.map((all) => all.at(-1))).toEqual(
        lines.map((_, i) => expect.stringMatching(new RegExp(`Printed .+ ${i + 1} / ${lines.length}$`))),
      );
      expect(lines.filter((all) => all.length < 2)).toEqual([]); // no sheet is empty but for its foot
    }
    for (const format of formats) {
      await layOut(page, "screen");
      await layOut(page, "print"); // the rows as they are on paper, to be marked
      let count = 0;
      const mark = async () => (count = await markRows(page)); // until those folded away on a screen are there
      await expect.poll(mark).toBeGreaterThanOrEqual(rows);
      const sheets = await printed(page, format);
      const cut = Array.from({ length: count }, (_, row) => row).filter(
        (row) => sheetsWith(sheets, row).length !== 1,
      );
      expect(cut).toEqual([]);
    }
  });

  test(`${name} prints black on white, by night too`, async ({ page }) => {
    await open(page, at);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ media: "print", colorScheme });
      const { inks, grounds } = await seenIn(page);
      expect(inks.length).toBeGreaterThan(5);
      // Source: WCAG 2.2, success criterion 1.4.6 (7 to 1), computed by the npm package culori 4.
      expect(inks.filter(({ colour }) => wcagContrast(colour, "#fff") < 7)).toEqual([]);
      const white = ["rgba(0, 0, 0, 0)", "rgb(255, 255, 255)"];
      expect(grounds.filter(({ colour }) => !white.includes(colour))).toEqual([]);
    }
  });
}

test("a table's head stands on every sheet that its rows reach", async ({ page }) => {
  await open(page, "/stash?view=list");
  for (const format of formats) {
    const all = (await printed(page, format)).map(linesOf);
    expect(all.length).toBeGreaterThan(3);
    expect(all.filter((lines) => !lines.includes("Name Where Have State"))).toEqual([]);
  }
});

/** ISO 32000-1, 8.3.2.3: a point is 1/72 inch. */
const mm = (points: number) => (points * 25.4) / 72;

/** A line has to be as wide as its pen's; printing may lose a thousandth in rounding the page's width to pixels. */
const near = (value: number, wanted: number) => Math.abs(value / wanted - 1) < 0.01;

const widthsOf = (sheets: readonly Sheet[]) =>
  sheets.flatMap(({ strokes }) => strokes.map(({ widthPt }) => mm(widthPt)));

test("a liner's line is true to the millimetre on paper", async ({ page }) => {
  await open(page, "/stash?view=list&kind=liner");
  await expect(page.getByRole("row")).toHaveCount(10);
  const edge = mm(0.25);
  const widths = widthsOf(await printed(page, "A4")).filter((width) => !near(width, edge));
  // The sample's liners and pens; a swatch of 30 px draws no line finer than half a px, or wider than 2.7 px.
  const known = [0.5 * (25.4 / 96), 0.2, 0.3, 0.35, 0.4, 0.5, 0.7, 2.7 * (25.4 / 96)];
  expect(widths.length).toBeGreaterThan(7);
  expect(widths.filter((width) => !known.some((one) => near(width, one)))).toEqual([]);
  for (const one of [0.3, 0.35, 0.5]) expect(widths.some((width) => near(width, one))).toBe(true);
});

test("a pair of liners is true to the millimetre on paper", async ({ page }) => {
  await open(page, "/remakes/rm-low-light/stand-ins");
  const widths = widthsOf(await printed(page, "A4"));
  expect(widths.some((width) => near(width, 0.3))).toBe(true); // the kit's half
  expect(widths.some((width) => near(width, 0.35))).toBe(true); // the stash's half
});

test("a ruler's ticks are true to the millimetre on paper", async ({ page }) => {
  await open(page, "/stash?view=list&q=steel%20ruler");
  await expect(page.getByRole("row")).toHaveCount(2);
  const [sheet] = await printed(page, "A4");
  // Its ticks are one stroke of upright lines; a small swatch has one every five millimetres.
  const ticks = (sheet?.strokes ?? []).map(({ points }) =>
    points.filter((_, i) => i % 2 === 0).map(([x]) => x),
  );
  const gaps = ticks.map((xs) => xs.slice(1).map((x, i) => mm(x - (xs[i] ?? 0))));
  expect(gaps.some((all) => all.length > 0 && all.every((gap) => near(gap, 5)))).toBe(true);
});

test("the list of the stash has its place's name on every sheet, and boxes to tick with a pen", async ({
  page,
}) => {
  await open(page, "/stash?print=list");
  const all = (await printed(page, "A4")).map(linesOf);
  // The first line of a sheet but the first is the head of the place whose things go on there, or begin.
  expect(all.length).toBeGreaterThan(3);
  const head = "Number Maker and line Have State";
  for (const lines of all.slice(1)) expect(lines[1]).toBe(head);
  const places = all.flatMap((lines) => lines.filter((_, at) => lines[at + 1] === head));
  expect(places.length).toBeGreaterThan(new Set(places).size); // some go on from one sheet to the next
  await layOut(page, "print");
  const box = page
    .getByRole("row", { name: /Gouache, barn red/ })
    .locator("[aria-hidden]")
    .first();
  const { width = 0, height = 0 } = (await box.boundingBox()) ?? {};
  expect(Math.min(width, height) * (25.4 / 96)).toBeGreaterThan(3);
  await expect(box).toHaveCSS("border-top-color", "rgb(0, 0, 0)");
});

/** The sides of every box of a sheet that is stroked, in mm, by its lower left corner: four points, and the way back. */
const boxesOf = ({ strokes }: Sheet) =>
  strokes
    .filter(({ points }) => points.length === 5)
    .map(({ points }) => {
      const corners = points.slice(0, 4).map(([x, y]) => [mm(x), mm(y)] as const);
      const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
    });

/** How far apart the values of a grid's lines are, each told once. */
function stepsOf(values: readonly number[]): readonly number[] {
  const lines = [...new Set(values.map((value) => Number(value.toFixed(1))))].toSorted((a, b) => a - b);
  return lines.slice(1).map((line, i) => line - (lines[i] ?? 0));
}

test("a swatch chart's cells, their ways apart and its rulers are true to a tenth of a millimetre", async ({
  page,
}) => {
  await open(page, "/stash?print=chart&order=name");
  for (const format of formats) {
    const all = await printed(page, format);
    expect(all).toHaveLength(4); // 116 things, 32 on a sheet
    for (const sheet of all) {
      const cells = boxesOf(sheet);
      expect(cells).toHaveLength(32);
      for (const { width, height } of cells) {
        expect(Math.abs(width - 27)).toBeLessThan(0.1);
        expect(Math.abs(height - 15)).toBeLessThan(0.1);
      }
      for (const step of stepsOf(cells.map(({ x }) => x))) expect(Math.abs(step - 45)).toBeLessThan(0.11);
      for (const step of stepsOf(cells.map(({ y }) => y))) expect(Math.abs(step - 25)).toBeLessThan(0.11);
      const rulers = sheet.strokes.filter(({ points }) => points.length === 24); // a line and eleven ticks
      expect(rulers).toHaveLength(2);
      for (const { points } of rulers) {
        const [[x0, y0], [x1, y1]] = points as [[number, number], [number, number]];
        expect(Math.abs(mm(Math.hypot(x1 - x0, y1 - y0)) - 100)).toBeLessThan(0.1);
      }
    }
    const text = all.map((sheet) => linesOf(sheet).join("\n"));
    expect(text[0]).toContain("8 rows × 4 columns, cells 27 × 15 mm, much paper between");
    expect(text[0]).toContain("no. bot, boot box under the bed");
    expect(text[3]).toContain("Sheet 4 of 4");
    expect(text.join("\n")).not.toContain("Back to the stash");
  }
  await page.getByLabel("blank cells").check();
  await page.getByLabel("Cells in a row").selectOption("6");
  const [blank, ...more] = await printed(page, "A4");
  expect(more).toEqual([]);
  expect(
    boxesOf(blank ?? { pieces: [], strokes: [], images: 0 }).filter(({ width }) => near(width, 17)),
  ).toHaveLength(48);
});

test("what goes on paper is what the search found, until all is asked for", async ({ page }) => {
  await open(page, "/stash?print=list&q=gouache");
  const rows = page.getByRole("rowheader");
  await expect(page.getByLabel(/^what the search found: \d+ things$/)).toBeChecked();
  const found = await rows.count();
  await page.getByLabel("all 145 things").check();
  await expect(page.getByText(/^\d+ more are on the sheet when it is printed\.$/)).toBeVisible();
  expect(await rows.count()).toBeGreaterThan(found);
  await page.getByLabel("In order of").selectOption("maker and line");
  await expect(page).toHaveURL(/by=maker/);
  await page.getByRole("link", { name: "Print a swatch chart" }).click();
  await expect(page.getByRole("img", { name: /^Sheet 1 of 4: 8 rows of 4 cells/ })).toBeVisible();
});

test("what was chosen one by one goes on paper, and into a file", async ({ page }) => {
  await open(page, "/stash?view=list&q=gouache");
  await page.getByRole("button", { name: "Choose several" }).click();
  for (const name of ["Choose Gouache, barn red", "Choose Gouache, heather"])
    await page.getByRole("checkbox", { name }).click();
  await page.getByRole("button", { name: "Print or save them" }).click();
  await expect(page.getByLabel("what you chose: 2 things")).toBeChecked();
  await page.getByRole("link", { name: "Print the stash list" }).click();
  await expect(page.getByRole("rowheader")).toHaveText([/^Gouache, barn red/, /^Gouache, heather/]);
  await page.reload(); // they are told while the page lives; then it is what the search found again
  await expect(page.getByLabel(/^what the search found: \d+ things$/)).toBeChecked();
});

test("what to fetch has boxes to tick with a pen", async ({ page }) => {
  await open(page, "/remakes/rm-low-light/stand-ins");
  await page.emulateMedia({ media: "print" });
  const boxes = page.locator("#fetch").getByRole("checkbox");
  await expect(boxes).toHaveCount(8);
  for (const box of await boxes.all()) {
    await expect(box).toBeVisible();
    const { width = 0, height = 0 } = (await box.boundingBox()) ?? {};
    expect(Math.min(width, height) * (25.4 / 96)).toBeGreaterThan(3);
    await expect(box).toHaveCSS("border-top-color", "rgb(0, 0, 0)");
  }
});
