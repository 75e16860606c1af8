import { parseRoute } from "../../src/ui/app/route.ts";
import { termsOf } from "../../src/ui/app/terms-of.ts";
import { meanings } from "../../src/ui/words/en/meanings.ts";
import { terms } from "../../src/ui/words/en/terms.ts";
import { sampleBook } from "../unit/sample.ts";
import { open, placesOf, step } from "./places.ts";
import { expect, test } from "./with-sample.ts";

const book = sampleBook();
const only = <T extends { id: string }>(records: readonly T[] | null | undefined, id: string) =>
  records?.filter((record) => record.id === id);
const addresses = placesOf({
  kits: only(book.kits, "sp-2026-02"),
  stash: only(book.stash, "st-001"),
  remakes: only(book.remakes, "rm-low-light"),
});

test("every place says what our own words on it mean", async ({ page }) => {
  await open(page, "/");
  for (const address of addresses) {
    await step(page, address);
    const line = page.getByRole("complementary", { name: "Words used here" });
    for (const term of termsOf(parseRoute(new URL(address, "http://x").pathname))) {
      const word = line.getByRole("button", { name: terms[term][0], exact: true });
      await word.click();
      await expect(page.getByRole("note")).toContainText(meanings[term].text);
      await page.keyboard.press("Escape");
      await expect(page.getByRole("note")).toBeHidden();
      await expect(word).toBeFocused();
    }
  }
});

test("a word is asked where it stands, and leads to all of them", async ({ page }) => {
  await open(page, "/remakes/rm-low-light/stand-ins");
  const lead = page.getByText("Seven of eight have a stand-in.");
  await lead.getByRole("button", { name: "stand-in" }).press("Enter");
  await page.getByRole("note").waitFor();
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "All our words" }).first()).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(/\/words\?of=standIn$/);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Our words");
  const entry = page.getByText(meanings.standIn.text);
  await expect(entry).toBeInViewport();
});

test("the search field finds a word and what it means", async ({ page }) => {
  await open(page, "/");
  await page.getByRole("combobox", { name: "Find a kit" }).fill("twin");
  await page.getByRole("option", { name: "twin what it means" }).click();
  await expect(page.getByText(meanings.twin.text)).toBeInViewport();
});
