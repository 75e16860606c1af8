import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { canonicalJson } from "../../src/engine/workbook/index.ts";
import { isBareJpeg } from "../../src/workers/photo/jpeg.ts";
import { heic, hugePng } from "../unit/workers/odd-photos.ts";
import { zipOf } from "../unit/workers/zipped.ts";
import { item } from "./kept/item.ts";
import { bookIn, picturesIn, rowsIn } from "./kept/rows.ts";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar D8, X3 and X6. The photos are Pillow's (fixtures/photos/make.py), each with where it was taken in it.

const photos = (page: Page) => page.getByRole("region", { name: "Photos" });
const small = (page: Page) => photos(page).locator("li img");
const picker = (page: Page) => photos(page).getByLabel("Add a photo");
const choose = (page: Page, name: string) => picker(page).setInputFiles(`fixtures/photos/${name}`);
const photosOf = async (page: Page) =>
  bookIn(await rowsIn(page)).stash?.find(({ id }) => id === "st-001")?.photos ?? [];

/** The size of a photo as it is shown, and what colour its top left corner has. */
const shown = (page: Page, place: number) =>
  small(page)
    .nth(place)
    .evaluate(async (image) => {
      if (!(image instanceof HTMLImageElement)) throw new Error("no picture");
      await image.decode();
      const context = new OffscreenCanvas(image.naturalWidth, image.naturalHeight).getContext("2d");
      context?.drawImage(image, 0, 0);
      const [red = 0, green = 0, blue = 0] = context?.getImageData(10, 10, 1, 1).data ?? [];
      return { width: image.naturalWidth, height: image.naturalHeight, red, green, blue };
    });

test("photos are kept without the place they were taken, the right way up, in acts that can be undone", async ({
  page,
}) => {
  await open(page, item);
  for (const [place, [name, width, height]] of (
    [
      ["place.jpg", 360, 480],
      ["place.webp", 360, 480],
      ["place.png", 120, 160],
    ] as const
  ).entries()) {
    await choose(page, name);
    await expect(small(page)).toHaveCount(place + 1);
    const photo = await shown(page, place);
    expect(photo).toMatchObject({ width, height });
    expect(photo.red).toBeGreaterThan(150); // the corner that is up and left
    expect(photo.green).toBeLessThan(80);
  }
  const kept = await picturesIn(page);
  expect(kept).toHaveLength(3);
  for (const { bytes } of kept) {
    expect(isBareJpeg(bytes)).toBe(true);
    expect(Buffer.from(bytes).toString("latin1")).not.toMatch(/Exif|GPS|xmp|taken at home|A camera/);
  }
  await choose(page, "place.jpg");
  await expect(page.getByText("That photo is here already.")).toBeVisible();

  await page.keyboard.press("Control+z");
  await expect(small(page)).toHaveCount(2);
  await page.keyboard.press("Control+Shift+z");
  await expect(small(page)).toHaveCount(3);
  await page.reload();
  await expect(small(page)).toHaveCount(3);

  await photos(page)
    .getByRole("button", { name: /^Photo 2 of 3 of / })
    .click();
  const dialog = page.getByRole("dialog", { name: /^Photo 2 of 3 of / });
  await expect(dialog.locator("img")).toHaveJSProperty("naturalHeight", 480);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await dialog.getByRole("button", { name: "Remove this photo" }).click();
  await expect(small(page)).toHaveCount(2);
  expect(await photosOf(page)).toHaveLength(2);
  await page.keyboard.press("Control+z");
  await expect(small(page)).toHaveCount(3);
  await expect.poll(async () => (await shown(page, 1)).height).toBe(480);
});

test("what is no photo is refused within two seconds, with what to do, and nothing is kept", async ({
  page,
}) => {
  await open(page, item);
  const whole = await readFile("fixtures/photos/place.jpg");
  const files: readonly (readonly [string, Buffer, RegExp])[] = [
    ["note.jpg", Buffer.from("taken at home"), /It is not a photo/],
    ["cut.jpg", whole.subarray(0, 5_000), /damaged or not all there/],
    ["empty.png", Buffer.alloc(0), /empty/],
    ["huge.png", Buffer.from(hugePng), /more than 52 million pixels/],
    ["phone.heic", Buffer.from(heic), /cannot read photos of this kind.*Save it as JPEG/],
    [
      "drawing.svg",
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'),
      /not a photo/,
    ],
  ];
  for (const [name, buffer, says] of files) {
    const from = Date.now();
    await picker(page).setInputFiles({ name, mimeType: "image/jpeg", buffer });
    const alert = page.getByRole("alert").filter({ hasText: `${name} was not added` });
    await expect(alert).toHaveText(says);
    expect(Date.now() - from).toBeLessThan(2_000);
  }
  expect(await photosOf(page)).toEqual([]);
  expect(await picturesIn(page)).toEqual([]);
});

test("a copy brings the photos back to the byte, and a hostile archive is refused", async ({ page }) => {
  await open(page, item);
  await choose(page, "place.jpg");
  await expect(small(page)).toHaveCount(1);
  const [book, pictures] = [bookIn(await rowsIn(page)), await picturesIn(page)];
  await open(page, "/keep-safe");
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy", exact: true }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/\.zip$/);
  await expect(page.getByText(/, 1 photo, .* It was read back and is whole\./)).toBeVisible();
  const path = await download.path();

  await page.evaluate(
    () =>
      new Promise((resolve) => {
        indexedDB.deleteDatabase("understudy").onsuccess = resolve;
      }),
  );
  await open(page, "/keep-safe");
  expect(await picturesIn(page)).toEqual([]);
  const bomb = zipOf([{ name: "../workbook.json", content: Buffer.from("{}") }]);
  await page
    .getByLabel("Choose a copy")
    .setInputFiles({ name: "bad.zip", mimeType: "", buffer: Buffer.from(bomb) });
  await expect(page.getByText(/names that point out of it/)).toBeVisible();
  await page.getByLabel("Choose another file").setInputFiles(path);
  await expect(page.getByRole("row", { name: /^Photos/ })).toContainText("1");
  await page.getByRole("button", { name: "Restore it" }).click();
  await expect(page.getByText(/^The copy is restored/)).toBeVisible();
  expect(canonicalJson(bookIn(await rowsIn(page)))).toBe(canonicalJson(book));
  expect(await picturesIn(page)).toEqual(pictures);
});
