import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, type Page, test } from "@playwright/test";
import { canonicalJson } from "../../../src/engine/workbook/index.ts";
import { item } from "./item.ts";
import { launchKillable } from "./killable.ts";
import { actsIn, bookIn, rowsIn, stateIn, toldBook } from "./rows.ts";
import { reportCommits } from "./spies.ts";

const kills = process.env.LONG ? 50 : 5;

/** Small acts and large ones, over and over: stock, and the whole sample taken out and put back. */
async function act(page: Page): Promise<never> {
  const more = page.getByRole("button", { name: "One more" });
  for (;;) {
    // A kill may have come while the sample was out: then putting it back comes first.
    if (await more.isVisible()) await more.click();
    for (const keys of ["Control+z", "Control+z", "Control+Shift+z", "Control+Shift+z"])
      await page.keyboard.press(keys);
  }
}

/** What the disk holds agrees with itself, and lacks nothing that was acknowledged. */
async function checkAll(page: Page, acknowledged: ReadonlySet<string>): Promise<void> {
  const rows = await rowsIn(page);
  const acts = actsIn(rows);
  const kept = new Set(acts.map(({ id }) => id));
  expect([...acknowledged].filter((id) => !kept.has(id))).toEqual([]);
  expect(stateIn(rows)).toMatchObject({ revision: acts.length, counter: acts.at(-1)?.counter ?? 0 });
  // An act torn in half would have its rows without its journal entry, or some of its rows.
  expect(canonicalJson(bookIn(rows))).toBe(canonicalJson(toldBook(rows)));
}

// Quality bar D2.
test(`a browser killed ${kills} times at any moment has lost nothing acknowledged, nor torn an act`, async ({
  baseURL,
  launchOptions,
}) => {
  test.setTimeout(30_000 + kills * 15_000);
  const home = baseURL ?? "";
  const profile = await mkdtemp(join(tmpdir(), "understudy-killed-"));
  const acknowledged = new Set<string>();
  try {
    for (let kill = 0; kill <= kills; kill += 1) {
      const { page, kill: end } = await launchKillable(profile, launchOptions);
      await reportCommits(page, (id) => acknowledged.add(id));
      await page.goto(home);
      await page.locator("h1:visible").waitFor();
      await checkAll(page, acknowledged);
      const begin = page.getByRole("button", { name: "Try the sample" });
      if (kill === 0) await begin.click();
      if (kill === 0) await page.getByText("This is the sample").waitFor();
      await page.goto(new URL(item, home).href);
      const before = acknowledged.size;
      const acting = act(page).catch(() => {}); // it ends with the browser
      await expect.poll(() => acknowledged.size).toBeGreaterThan(before);
      const moment = Math.random() * 1_000;
      await test.step(`killed after ${moment.toFixed(0)} ms`, async () => {
        await wait(moment);
        await end();
        await acting;
      });
    }
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
});
