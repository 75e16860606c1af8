import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

test("two lines are linked number by number from a pasted list, by keyboard, and taken back by one undo", async ({
  page,
}) => {
  await open(page, "/stash?kin=all");
  await expect(page.getByRole("heading", { name: "6 links" })).toBeVisible();
  await page.getByRole("button", { name: "Link two products" }).press("Enter");
  await expect(page.getByRole("radio", { name: "the same under two labels" })).toBeFocused();
  const [one, other] = [
    page.getByRole("group", { name: "One" }),
    page.getByRole("group", { name: "The other" }),
  ];
  await one.getByRole("combobox", { name: "Maker" }).fill("Sorr");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect(one.getByRole("combobox", { name: "Maker" })).toHaveValue("Sorrelby");
  await one.getByRole("combobox", { name: "Line" }).fill("Oilcore");
  await page.getByRole("radio", { name: "by a list of numbers" }).check();
  await page.getByRole("textbox", { name: "Pairs of numbers" }).fill("12 = 340\nmoss\n13\t350");
  await page.getByRole("button", { name: "Link these 2 pairs" }).click();
  await expect(other.getByText("Write the maker or the line.")).toBeVisible();
  await other.getByRole("combobox", { name: "Maker" }).fill("Nybäcken");
  await page.getByRole("button", { name: "Link these 2 pairs" }).click();
  await expect(page.getByText("“moss” is no pair of numbers.")).toBeVisible();
  await page.getByRole("textbox", { name: "Pairs of numbers" }).fill("12 = 340\n13\t350");
  await page.getByRole("button", { name: "Link these 2 pairs" }).click();
  await expect(page.getByRole("heading", { name: "8 links" })).toBeVisible();
  const row = page.getByRole("row", { name: /Sorrelby, Oilcore, no\. 13/ });
  await expect(row).toContainText("Nybäcken, no. 350");
  await expect(row).toContainText("none of mine");
  await page.reload();
  await expect(row).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(page.getByRole("heading", { name: "6 links" })).toBeVisible();
});

test("a thing is linked with one that nobody here owns, and its line's makers and sizes are offered", async ({
  page,
}) => {
  await open(page, "/stash/st-003");
  await page.getByRole("link", { name: "Link it with what is not on your shelf" }).click();
  const one = page.getByRole("group", { name: "One" });
  await expect(one.getByRole("combobox", { name: "Maker" })).toHaveValue("Torrin Hill");
  await expect(one.getByRole("textbox", { name: "Number" })).toHaveValue("rle");
  const other = page.getByRole("group", { name: "The other" });
  await other.getByRole("combobox", { name: "Maker" }).fill("Nybäcken");
  await other.getByRole("textbox", { name: "Number" }).fill("88");
  await page.getByRole("button", { name: "Link them" }).click();
  await expect(page.getByRole("heading", { name: "7 links" })).toBeVisible();
  await open(page, "/stash/st-003");
  await expect(page.getByText("Nybäcken, no. 88: the same under two labels")).toBeVisible();
});
