import { open as openFile, rm } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { sizeLimitBytes } from "../../src/engine/workbook/index.ts";
import { sampleBook } from "../unit/sample.ts";
import { badFiles } from "./bad-input/refused-files.ts";
import { openFields, payload, stuffed } from "./bad-input/stuffed.ts";
import { rowsIn } from "./kept/rows.ts";
import { seenIn, spyOnTransactions } from "./kept/spies.ts";
import { fewOf, open, placesOf, step } from "./places.ts";
import { expect, test } from "./with-sample.ts";

const mimeType = "application/json";
const picker = (page: Page) => page.getByLabel(/^Choose (a copy|another file)$/);

/** The places of the faults on show. */
const placesShown = (page: Page) =>
  page.getByRole("region", { name: "What is wrong, and where" }).locator("code").allTextContents();

test("a file at fault is refused whole, with every fault at its place, and nothing changes", async ({
  page,
  context,
}) => {
  await spyOnTransactions(context);
  await open(page, "/keep-safe");
  const before = await rowsIn(page);
  for (const { name, bytes, places } of badFiles) {
    await picker(page).setInputFiles({ name: `${name}.json`, mimeType, buffer: bytes });
    await expect(page.getByText(`${name}.json was not restored`)).toBeVisible();
    expect([...new Set(await placesShown(page))].toSorted(), name).toEqual(places.toSorted());
  }
  expect(await rowsIn(page)).toEqual(before);
  expect((await seenIn(page)).filter(({ mode }) => mode === "readwrite")).toEqual([]);
});

test("a file over 50 MB is refused within two seconds, unread", async ({ page }, info) => {
  await open(page, "/keep-safe");
  const path = info.outputPath("huge.json");
  const file = await openFile(path, "w");
  await file.truncate(sizeLimitBytes + 1);
  await file.close();
  await page.evaluate(() => {
    for (const name of ["arrayBuffer", "text", "stream"] as const)
      Object.defineProperty(Blob.prototype, name, {
        value: () => Promise.reject(new Error("it was read")),
      });
  });
  await picker(page).setInputFiles(path);
  await expect(page.getByText("huge.json was not restored")).toBeVisible({ timeout: 2_000 });
  await expect(page.getByText("Larger than 50 MB")).toBeVisible();
  expect(await placesShown(page)).toEqual(["file"]);
  await rm(path);
});

declare global {
  /** Set by the payload, if it ever runs. */
  var hit: number | undefined;
}

/** Opens whatever says "why?", where texts are told once more. */
const askWhy = (page: Page) =>
  page.evaluate(() => {
    for (const one of document.querySelectorAll<HTMLElement>("button, summary"))
      if (one.textContent?.trim().startsWith("why?")) one.click();
  });

/** What the page has made of the payload: elements, addresses, and where it stands as text. */
const madeOfPayload = (page: Page) =>
  page.evaluate((text) => {
    const values = [...document.querySelectorAll<HTMLInputElement>("input, textarea")].map((it) => it.value);
    return {
      elements: document.querySelectorAll('[src="x"], [onerror], [onload], script:not([src])').length,
      addresses: document.querySelectorAll('[href^="javascript:" i]').length,
      outside: [...document.querySelectorAll<HTMLAnchorElement>('a[href*="//"]')].filter(
        ({ origin, rel }) => origin !== location.origin && !/noopener.*noreferrer/.test(rel),
      ).length,
      asText: [document.body.textContent ?? "", ...values].filter((it) => it.includes(text)).length > 0,
    };
  }, payload);

/** What else is done with the stash: nothing of the notebook may be seen there yet, or only the head of a long name. */
const mayShowNothing = (address: string): boolean => /^\/stash\?(?!view=)/.test(address);

test.describe("with markup in every field that takes any text", () => {
  // Without the policy, which would stop what the app let through: it is the app that is on trial here.
  test.use({ bypassCSP: true });

  test("text is shown as text in every place, and nothing runs", async ({ page }) => {
    const fields = openFields(sampleBook());
    expect(fields.size).toBeGreaterThan(80);
    const book = stuffed(sampleBook(), fields);
    const buffer = Buffer.from(JSON.stringify(book));
    await open(page, "/keep-safe");
    await picker(page).setInputFiles({ name: "stuffed.json", mimeType, buffer });
    await page.getByRole("button", { name: "Restore it" }).click();
    await expect(page.getByText("The copy is restored")).toBeVisible();

    for (const address of placesOf(fewOf(book))) {
      await step(page, address);
      await askWhy(page);
      expect(await madeOfPayload(page), address).toEqual({
        elements: 0,
        addresses: 0,
        outside: 0,
        asText: mayShowNothing(address) ? expect.any(Boolean) : true,
      });
    }
    await page.getByRole("combobox", { name: "Find a kit" }).fill("<img");
    await expect(page.getByRole("option").first()).toContainText(payload);
    expect(await page.evaluate(() => globalThis.hit)).toBeUndefined();

    // The payload is a live one: taken for markup, it does run.
    await page.evaluate((markup) => document.body.insertAdjacentHTML("beforeend", markup), payload);
    await page.waitForFunction(() => globalThis.hit === 1);
  });
});
