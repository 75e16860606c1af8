import type { Page } from "@playwright/test";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

const row = (page: Page, name: string) =>
  page
    .getByRole("listitem")
    .filter({ has: page.getByText(name, { exact: true }) })
    .first();
const act = (page: Page, verb: string, name: string) =>
  page.getByRole("button", { name: new RegExp(`^${verb} ?, ${name}`) }).first();

test("what sources say differently is settled with a reason; a correction stands beside its line", async ({
  page,
}) => {
  await open(page, "/kits/sp-2026-04/contents");
  await expect(page.getByText("Sources differ on two of them.")).toBeVisible();
  await act(page, "change", "Liner, black").click();
  await page.getByRole("radio", { name: /0\.35/ }).check();
  await page.getByRole("textbox", { name: "Why" }).fill("read off the barrel");
  await page.getByRole("button", { name: "Go with this" }).click();
  await expect(page.getByText("Width: went with 0.35")).toBeVisible();
  await expect(page.getByRole("textbox", { name: /^Width/ })).toHaveValue("0.35");
  await expect(page.getByText("Went with width 0.35: read off the barrel.")).toBeVisible();
  await expect(page.getByText("Sources differ on one of them.")).toBeVisible();
  await act(page, "close", "Liner, black").click();

  await page.getByRole("button", { name: "Note a correction" }).click();
  await page.getByRole("textbox", { name: "What it says" }).fill("All liners are 0.35 mm.");
  await page.getByRole("checkbox", { name: "6 Liner, black" }).check();
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(page.getByText(/Corrected by the maker on .*: All liners are 0\.35 mm\./)).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("All liners are 0.35 mm.")).toHaveCount(0);
});

test("a thing sent in several forms goes by another one, in one act", async ({ page }) => {
  await open(page, "/kits/hd-2026-03/contents");
  const first = act(page, "change", "");
  const before = (await first.getAttribute("aria-controls")) ?? "";
  await first.click();
  await act(page, "go by this one", "Alcohol marker, pale sky").click();
  await expect(
    page.locator(`[id="${before}"]`).getByRole("textbox", { name: "Name", exact: true }),
  ).toHaveValue("Alcohol marker, pale sky");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(act(page, "go by this one", "Alcohol marker, pale sky")).toBeVisible();
});

const messy = `• 2x gouashe tubes, moss, 15ml
☐ HB pencil
3) kneaded eraser £1.20
- fineliner 0.3 black waterproof
- alcohol marker brush/chisel, dusty pink
- A5 sketchbook 120gsm 40 sheets
- w/c block 9x12 in, 140lb, rough
- no. 6 round brush sable
- acrylic ink 30ml (1oz) turquoise
- masking tape 24mm x 10m
- The card says: Coloured Pencil, Burnt Ochre (1)
- something nobody could read`;

test("a kit starts as a copy; a line is suggested; a messy list is put right in place and added", async ({
  page,
}) => {
  await open(page, "/kits/sp-2026-04/contents");
  await page.getByRole("button", { name: "More about this kit" }).click();
  await page.getByRole("menuitem", { name: "Log another one like this" }).click();
  await expect(page.getByRole("combobox", { name: "Start from an earlier kit" })).toHaveValue("sp-2026-04");
  await page.getByLabel("Month", { exact: true }).fill("June 2026");
  await page.getByLabel("Month", { exact: true }).press("Enter");
  const field = page.getByLabel("Line 9, as you would say it");
  await expect(field).toBeFocused();
  await expect(page.getByText("as in Low light, ebb tide").first()).toBeVisible();

  await page.keyboard.type("2 rowan");
  const list = page.getByRole("listbox", { name: "In earlier kits" });
  await expect(list).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await expect(list.getByRole("option", { selected: true })).toContainText("Gouache, rowan");
  await page.keyboard.press("Enter");
  await expect(field).toHaveValue("2 Gouache, rowan");
  await page.keyboard.press("Enter");
  await expect(row(page, "Gouache, rowan").last()).toBeVisible();

  await page.getByLabel("Line 10, as you would say it").fill(messy);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "Twelve lines to add" })).toBeVisible();
  await expect(page.getByRole("checkbox", { name: "Keep GBP 1.20 as a price found" })).toBeChecked();
  await act(page, "put right", "Something nobody").click();
  await page.getByLabel("Line 12 of the list").fill("soft pastel, moss");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Add all twelve lines" }).click();
  await expect(page.getByText("There are 21 things in it.")).toBeVisible();
  await expect(row(page, "Soft pastel, moss")).toBeVisible();

  await page.getByRole("link", { name: "Prices", exact: true }).click();
  const line = page.getByRole("row", { name: /Kneaded eraser/ });
  await line
    .first()
    .getByRole("button", { name: /^prices/ })
    .click();
  const found = page.getByRole("region", { name: "Prices found" });
  await expect(found).toContainText("GBP 1.20");
  await expect(found).toContainText("from the card");
});

test("a colour guessed from its name says so, and one pointed at in a photo takes its place", async ({
  page,
}) => {
  await open(page, "/kits/sp-2026-04/contents");
  await page.getByLabel("Line 9, as you would say it").fill("gouache tube teal");
  await page.keyboard.press("Enter");
  await act(page, "change", "Gouache, teal").click();
  await expect(page.getByText(/may lie up to 15 away/)).toBeVisible();
  await page.getByRole("button", { name: "Pick it from a photo" }).click();
  const photo = { name: "card.png", mimeType: "image/png", buffer: await page.screenshot() };
  await page.getByLabel("Choose a photo").setInputFiles({ ...photo, buffer: Buffer.from("no picture") });
  await expect(page.getByText("This is no picture that the browser can read.")).toBeVisible();
  await page.getByLabel("Choose a photo").setInputFiles(photo);
  await page.getByRole("button", { name: "The photo, to point at" }).press("Enter");
  await expect(page.getByText(/within the ring it varies by/)).toBeVisible();
  await page.getByRole("button", { name: "Use this colour" }).click();
  await expect(page.getByText(/may lie up to 15 away/)).toHaveCount(0);
  await expect(page.getByRole("textbox", { name: "Colour, as hex" })).not.toHaveValue("#008080");
});
