import type { Page } from "@playwright/test";
import { sampleBook } from "../unit/sample.ts";
import { open, step } from "./places.ts";
import { test as atFirst } from "./watched.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U12: every act is reached by its name from the one search field. WCAG 2.2, 2.1.4: single keys can be
// turned off.

const finder = (page: Page) => page.getByRole("combobox", { name: "Find a kit, a supply, an act" });

/** Names something in the search field; what is found first is what Enter takes. */
async function name(page: Page, text: string): Promise<void> {
  await finder(page).fill(text);
  await expect(page.getByRole("search").getByRole("option", { selected: true })).toContainText(text);
}

/** What each place does, by name. */
const acts: readonly (readonly [at: string, names: readonly string[]])[] = [
  ["/", ["Remove the sample", "Turn single-key shortcuts off"]],
  ["/kits", ["Log a kit"]],
  ["/kits/sp-2026-02/contents", ["Add a line", "Add a tier", "Remove this kit", "Prices", "Worth"]],
  ["/kits/sp-2026-02/worth?market=se", ["Copy the table of tiers", "Copy the table of lines", "Contents"]],
  ["/stash", ["Add to the stash", "By colour", "As a list"]],
  ["/stash/st-001", ["Change what it is", "Another like this", "Remove from the stash"]],
  ["/remakes", ["Take up a kit"]],
  ["/remakes/rm-low-light/stand-ins", ["Go to what to fetch", "Bench", "Verdict", "Write-up"]],
  ["/remakes/rm-low-light/bench", ["Write down a step", "Remove this remake"]],
  ["/remakes/rm-low-light/verdict", ["Give a verdict"]],
  ["/remakes/rm-low-light/write-up", ["Copy the text", "Download", "Publish: keep this version"]],
  ["/markets", ["Add a market", "Put in a day's rates", "Add a shop", "Add a parcel"]],
  ["/keep-safe", ["Save a copy of everything", "Bring a copy back", "Remove everything"]],
];

test("what each place does is found there by name", async ({ page }) => {
  await open(page, "/");
  for (const [at, names] of acts) {
    await step(page, at);
    for (const act of names) await name(page, act);
  }
});

atFirst("so is the sample, of an empty notebook", async ({ page }) => {
  await open(page, "/");
  await name(page, "Try the sample");
  await page.keyboard.press("Enter");
  await expect(page.getByText("This is the sample")).toBeVisible();
});

/** What can be asked for from anywhere: how a person might call it, and where the focus is once it is asked for. */
const fromAnywhere = [
  { asked: "log a kit", focus: "Maker" },
  { asked: "add to the stash", focus: "What you have, as you would say it" },
  { asked: "take up a kit", focus: "Kit" },
  { asked: "add a market", focus: "Market" },
  { asked: "day's rates", focus: "Day" },
  { asked: "add a shop", focus: "Shop" },
  { asked: "add a parcel", focus: "From" },
  { asked: "restore", focus: "Choose a copy" },
] as const;

test("each place is asked for what it does from anywhere, and the focus goes where it is done", async ({
  page,
}) => {
  await open(page, "/");
  for (const { asked, focus } of fromAnywhere) {
    await page.keyboard.press("Control+/");
    await page.keyboard.type(asked);
    await page.keyboard.press("Enter");
    await expect(page.locator(":focus")).toHaveAccessibleName(focus);
  }
  await page.keyboard.press("Control+/");
  await page.keyboard.type("back up now");
  const saved = page.waitForEvent("download");
  await page.keyboard.press("Enter");
  expect((await saved).suggestedFilename()).toMatch(/\.json$/);
});

test("undo and redo are found once there is something to take back, and do it", async ({ page }) => {
  await open(page, "/stash/st-001");
  const note = page.getByRole("textbox", { name: "Note", exact: true });
  const before = await note.inputValue();
  await note.fill("behind the jars");
  await note.blur();
  for (const [act, value] of [
    ["Undo the last change", before],
    ["Redo", "behind the jars"],
  ] as const) {
    await name(page, act);
    await page.keyboard.press("Enter");
    await expect(note).toHaveValue(value);
  }
});

test("the focus is back where it was once something is found, or Escape has left it", async ({ page }) => {
  await open(page, "/stash/st-001");
  const note = page.getByRole("textbox", { name: "Note", exact: true });
  await note.focus();
  await page.keyboard.press("Control+/");
  await expect(finder(page)).toBeFocused();
  await page.keyboard.type("nothing is called so");
  await page.keyboard.press("Escape"); // closes the list
  await expect(finder(page)).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(note).toBeFocused();
  await expect(finder(page)).toHaveValue("");
});

test("turned off, single keys do nothing, also after loading again; the chord still finds", async ({
  page,
}) => {
  await open(page, "/remakes/rm-low-light/stand-ins");
  await name(page, "Turn single-key shortcuts off");
  await page.keyboard.press("Enter");
  for (const time of ["at once", "after loading again"]) {
    const why = page.getByRole("button", { name: /^why\?/ }).nth(1);
    await why.focus();
    for (const key of ["/", "n"]) await page.keyboard.press(key);
    await expect(why, time).toBeFocused();
    await expect(page.getByText(/^Line \d+ now has /)).toHaveCount(0);
    await open(page, "/remakes/rm-low-light/stand-ins");
  }
  await page.keyboard.press("Control+/");
  await expect(finder(page)).toBeFocused();
  await name(page, "Turn single-key shortcuts on");
  await page.keyboard.press("Enter");
  await page.keyboard.press("/");
  await expect(finder(page)).toBeFocused();
});

test("what is found beyond the twelve is counted, and leads to where all of it stands", async ({ page }) => {
  const maker = "Sorrelby";
  const owned = (sampleBook().stash ?? []).filter(({ supply }) => supply.maker === maker).length;
  await open(page, "/");
  await finder(page).fill(maker);
  const options = page.getByRole("search").getByRole("option");
  await expect(options).toHaveCount(13);
  await expect(options.last()).toContainText(`and ${owned - 12} more`);
  await expect(page.getByRole("search").getByRole("status")).toHaveText(`${owned} found`);
  await page.keyboard.press("ArrowUp"); // from the first to the last
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(`/stash?q=${maker}&view=list`);
  await expect(page.getByRole("main").getByText(`${owned} found`)).toBeVisible();
});

test("an act that was taken back stands in the history once, as it is now", async ({ page }) => {
  await open(page, "/stash/st-001");
  const note = page.getByRole("textbox", { name: "Note", exact: true });
  await note.fill("behind the jars");
  await note.blur();
  for (const [act, told] of [
    ["Undo the last change", "taken back"],
    ["Redo", "done again"],
  ] as const) {
    await name(page, act);
    await page.keyboard.press("Enter");
    await step(page, "/keep-safe");
    const rows = page.getByRole("table", { name: "Changes, newest first" }).getByRole("row");
    await expect(rows).toHaveCount(3); // its head, the note, the sample
    await expect(rows.nth(1)).toContainText(told);
  }
});
