import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

test("a whole set of colours is pasted, looked over, added in one act and taken back by one undo", async ({
  page,
}) => {
  await open(page, "/stash?set=new");
  await expect(page.getByRole("button", { name: "Add them" })).toBeDisabled();
  await page
    .getByRole("textbox", { name: "The colours" })
    .fill("12 moss #6b7d3a\nB-13; brick; #a04030\nfjord mist\n12 moss #6b7d3a");
  await page.getByRole("button", { name: "Add these 3" }).click();
  await expect(page.getByText("Say what they are first")).toBeVisible();
  await page.getByRole("textbox", { name: "What each of them is" }).fill("gouache tube 15 ml");
  await expect(page.getByText("Understood as Gouache, tube, 15 ml.")).toBeVisible();
  await page.getByRole("combobox", { name: "Maker" }).fill("Nybäcken");
  await page.getByRole("combobox", { name: "Line" }).fill("Bäck");
  await page.getByRole("combobox", { name: "Where these live" }).fill("new tin");
  await page.keyboard.press("Tab");
  const rows = page.getByRole("listitem").filter({ hasText: "Gouache" });
  await expect(rows).toHaveCount(4);
  await expect(rows.nth(1)).toContainText("Gouache, brickno. B-13");
  await expect(rows.nth(2)).toContainText("no number, no colour said");
  await expect(rows.nth(3)).toContainText("stands twice in the list");
  await page.getByRole("button", { name: "Add these 3" }).click();
  await expect(page.getByText("Added 3 colours to the stash")).toBeVisible();
  await page.getByRole("textbox", { name: "The colours" }).fill("12 moss #6b7d3a\n14 plum");
  await expect(page.getByText("is in the stash already")).toBeVisible();
  await open(page, "/stash?view=list&q=nyb%C3%A4cken");
  await expect(page.getByRole("table").getByRole("rowheader")).toHaveCount(3);
  await page.keyboard.press("Control+z");
  await expect(page.getByText("Nothing in the stash fits this.")).toBeVisible();
});
