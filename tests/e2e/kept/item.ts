import type { Locator, Page } from "@playwright/test";
import { bookIn, type Rows } from "./rows.ts";

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
