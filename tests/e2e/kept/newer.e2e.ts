import type { Page } from "@playwright/test";
import { open } from "../places.ts";
import { expect, test } from "../with-sample.ts";
import { item, noteOf, savedWord, writeNote } from "./item.ts";
import { rowsIn } from "./rows.ts";

// Quality bar D4. A newer version of the app is stood in for by what it would leave in the database.

const says = "A newer version of the app has been used here, so this tab only reads.";

/** Stamps the database as a newer version does that still has the same tables. */
const stampAsNewer = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((give, fail) => {
        const opening = indexedDB.open("understudy");
        opening.onerror = () => fail(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const writing = db.transaction("meta", "readwrite", { durability: "strict" });
          writing.objectStore("meta").put({ key: "stamp", schema: 9, minimumWriter: 9 });
          writing.oncomplete = () => {
            db.close();
            give();
          };
        };
      }),
  );

/** Raises the database's own version, with a table more, as a newer version does. */
const raiseVersion = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((give, fail) => {
        const opening = indexedDB.open("understudy", 90);
        opening.onblocked = () => fail(new Error("the open tab does not make way"));
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore("newer");
          opening.transaction?.objectStore("meta").put({ key: "stamp", schema: 9, minimumWriter: 9 });
        };
        opening.onsuccess = () => {
          opening.result.close();
          give();
        };
      }),
  );

for (const [how, becomeNewer] of [
  ["has stamped the database", stampAsNewer],
  ["has changed its tables", raiseVersion],
] as const)
  test(`an open tab only reads once a newer version ${how}`, async ({ page, context }) => {
    await open(page, item);
    const other = await context.newPage();
    await other.route("/elsewhere", (route) => route.fulfill({ contentType: "text/html", body: "no app" }));
    await other.goto("/elsewhere");
    await becomeNewer(other);
    const before = await rowsIn(other);
    await writeNote(page, "typed in the old tab");
    await expect(page.getByText(says)).toBeVisible();
    await expect(savedWord(page)).toHaveText("Read only");
    await expect(noteOf(page)).toHaveValue("typed in the old tab");
    await page.keyboard.press("Control+z");
    await expect(page.getByRole("button", { name: "Save a copy now" })).toBeVisible();
    expect(await rowsIn(other)).toEqual(before);
  });

test("old code that opens a newer database reads it and writes nothing", async ({ page }) => {
  await open(page, item);
  await stampAsNewer(page);
  const before = await rowsIn(page);
  await open(page, item);
  await expect(page.getByText(says)).toBeVisible();
  await expect(page.getByRole("heading", { name: "Gouache, fern shade" }).first()).toBeVisible();
  await writeNote(page, "typed in old code");
  await page.keyboard.press("Control+z");
  await expect(savedWord(page)).toHaveText("Read only");
  await open(page, "/keep-safe");
  expect(await rowsIn(page)).toEqual(before);
});
