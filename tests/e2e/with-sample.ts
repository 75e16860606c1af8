import type { BrowserContext } from "@playwright/test";
import { test as watched } from "./watched.ts";

type Kept = Awaited<ReturnType<BrowserContext["storageState"]>>;

/** A watched test whose notebook holds the sample, as if it had been loaded before. Each worker loads it once. */
export const test = watched.extend<object, { sampleKept: Kept }>({
  sampleKept: [
    async ({ browser }, use, { project }) => {
      const { baseURL = "" } = project.use;
      const page = await browser.newPage({ baseURL });
      await page.goto("/");
      await page.getByRole("button", { name: "Try the sample" }).click();
      await page.getByText("This is the sample").waitFor();
      await use(await page.context().storageState({ indexedDB: true }));
      await page.context().close();
    },
    { scope: "worker" },
  ],

  storageState: ({ sampleKept }, use) => use(sampleKept),
});

export { expect } from "./watched.ts";
