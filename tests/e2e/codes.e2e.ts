import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { drawnCode } from "../unit/workers/drawn-code.ts";
import { bookIn, rowsIn } from "./kept/rows.ts";
import { open } from "./places.ts";
import { expect, test, watch } from "./watched.ts";

const address = "/stash?code=find";
const code = "2001234567893"; // of the range for use inside a shop; its photo is fixtures/photos/bar-code.jpg
const number = (page: Page) => page.getByLabel("Number under the bars");
const find = (page: Page) => page.getByRole("button", { name: "Find it" });
const photo = (page: Page) => page.getByLabel("Choose a photo of the bars");

test("a number that nothing has is added with a thing, and finds it typed and by photo", async ({ page }) => {
  await open(page, address);
  await expect(number(page)).toBeFocused();
  await number(page).fill("2 001234 567894");
  await find(page).click();
  await expect(page.getByText("The last figure does not fit the others")).toBeVisible();
  await photo(page).setInputFiles("fixtures/photos/place.jpg");
  await expect(page.getByText("No bar code was seen in the photo.")).toBeVisible();
  await photo(page).setInputFiles({ name: "x.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no photo") });
  await expect(page.getByText("It is not a photo.")).toBeVisible();

  await photo(page).setInputFiles("fixtures/photos/bar-code.jpg");
  await expect(page.getByText(`Nothing of yours has ${code}`)).toBeVisible();
  await page.getByRole("button", { name: "Add a thing with this number" }).click();
  await page.keyboard.type("gouache moss 15 ml");
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(/\/stash\/st-/);
  expect(bookIn(await rowsIn(page)).stash?.map(({ supply }) => supply.gtin)).toEqual([code]);
  const there = page.url();

  await open(page, address);
  await photo(page).setInputFiles("fixtures/photos/bar-code.jpg");
  await expect(page).toHaveURL(there);
  await open(page, address);
  await number(page).fill(`0${code}`);
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(there);
});

test("without a camera, or without leave to use it, typing and photos are offered", async ({ page }) => {
  await open(page, address);
  for (const [name, says] of [
    ["NotFoundError", /no camera here.*Type the number, or choose a photo/],
    ["NotAllowedError", /may not be used.*type the number, or choose a photo/],
  ] as const) {
    await page.evaluate((error) => {
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException("no", error));
    }, name);
    await page.getByRole("button", { name: "Use the camera" }).click();
    await expect(page.getByRole("status").filter({ hasText: says })).toBeVisible();
    await expect(page.getByRole("button", { name: "Use the camera" })).toBeVisible();
  }
});

/** A film of one picture, as browsers take it for a camera: YUV4MPEG2, greys alone in colour 4:2:0. */
function filmOf({ data, width, height }: ReturnType<typeof drawnCode>): Buffer {
  const colours = Buffer.alloc((width * height) / 2, 128);
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`);
  return Buffer.concat([
    head,
    ...Array.from({ length: 3 }, () => [Buffer.from("FRAME\n"), Buffer.from(data), colours]).flat(),
  ]);
}

test("held before the camera it is read, and the camera is off once it is, and once the page is left", async ({
  playwright,
  baseURL: given,
}, { project }) => {
  const baseURL = given ?? "";
  const folder = await mkdtemp(join(tmpdir(), "film-"));
  const film = join(folder, "code.y4m");
  await writeFile(
    film,
    filmOf(drawnCode(code, { width: 640, height: 480, module: 3, degrees: 8, blur: 0.8, noise: 6 })),
  );
  const { args = [], ...options } = project.use.launchOptions ?? {};
  const fake = ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream"];
  const browser = await playwright.chromium.launch({
    ...options,
    args: [...args, ...fake, `--use-file-for-fake-video-capture=${film}`],
  });
  const context = await browser.newContext({ baseURL, locale: "en-IE" });
  const wrong = await watch(context, baseURL);
  const page = await context.newPage();
  await context.addInitScript(() => {
    const { getUserMedia } = MediaDevices.prototype;
    MediaDevices.prototype.getUserMedia = async function (asked) {
      const stream = await getUserMedia.call(this, asked);
      (window as { streams?: MediaStream[] }).streams = [
        ...((window as { streams?: MediaStream[] }).streams ?? []),
        stream,
      ];
      return stream;
    };
  });
  const areOff = () =>
    page.evaluate(() =>
      ((window as { streams?: MediaStream[] }).streams ?? []).map((stream) =>
        stream.getTracks().every(({ readyState }) => readyState === "ended"),
      ),
    );
  await open(page, address);
  await page.getByRole("button", { name: "Use the camera" }).click();
  // A browser of its own has to start, and then its camera: on a busy machine that takes longer than a page does.
  await expect(page.getByText(`Nothing of yours has ${code}`)).toBeVisible({ timeout: 25_000 });
  await expect(page.getByLabel("What the camera sees")).toHaveCount(0);
  expect(await areOff()).toEqual([true]);

  await page.getByRole("button", { name: "Use the camera" }).click();
  await page.getByRole("link", { name: "Back to the stash" }).click();
  await expect.poll(areOff).not.toContain(false);
  expect(wrong).toEqual([]);
  await browser.close();
  await rm(folder, { recursive: true });
});
