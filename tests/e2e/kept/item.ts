import { expect, type Locator, type Page } from "@playwright/test";
import { bookIn, type Rows, rowsIn } from "./rows.ts";

/** The address of the sample's first thing, whose note these tests write. */
export const item = "/stash/st-001";

export const noteOf = (page: Page): Locator => page.getByRole("textbox", { name: "Note", exact: true });

/** What the frame says of the disk. */
export const savedWord = (page: Page): Locator =>
  page.getByRole("banner").getByText(/^(Saved|Saving|Not saved|Read only)/);

/** Writes the note and leaves the field, which is when it is kept. */
export async function writeNote(page: Page, text: string): Promise<void> {
  await noteOf(page).fill(text);
  await noteOf(page).blur();
}

/** The note as it is on the disk. */
export const keptNote = (rows: Rows): string | null =>
  bookIn(rows).stash?.find(({ id }) => id === "st-001")?.note ?? null;

/** Writes the note and waits until it is on the disk: what is under way when a page is left may be lost. */
export async function keepNote(page: Page, text: string): Promise<void> {
  await writeNote(page, text);
  await expect.poll(async () => keptNote(await rowsIn(page))).toBe(text);
}
