import type { Locator, Page } from "@playwright/test";

import { step } from "./places.ts";
import { expect, test } from "./watched.ts";

/** Every place and tab of the sample: its address, the window's title, and what of its own it shows. */
const places = [
  { at: "/", title: /^Next: .+ - Desk - Understudy$/, shows: "This is the sample" },
  { at: "/kits", title: "Kits - Understudy", shows: "Slow thaw" },
  { at: "/kits/sp-2026-02/contents", title: "Slow thaw - Kits - Understudy", shows: "About this kit" },
  { at: "/kits/sp-2026-02/prices", title: "Slow thaw - Kits - Understudy", shows: "Prices in Sweden" },
  { at: "/kits/sp-2026-02/worth", title: "Slow thaw - Kits - Understudy", shows: "Against each tier" },
  { at: "/kits/sp-2026-02/worth?market=jp", title: "Slow thaw - Kits - Understudy", shows: "In Japan" },
  { at: "/stash", title: "Stash - Understudy", shows: "Search the stash" },
  { at: "/stash?view=list", title: "Stash - Understudy", shows: "Acrylic, bottle green" },
  { at: "/stash/st-001", title: "Stash - Understudy", shows: "Gouache, fern shade" },
  { at: "/remakes", title: "Remakes - Understudy", shows: "Take up a kit" },
  {
    at: "/remakes/rm-low-light/stand-ins",
    title: "Low light, ebb tide - Remakes - Understudy",
    shows: "Fetch them",
  },
  {
    at: "/remakes/rm-low-light/bench",
    title: "Low light, ebb tide - Remakes - Understudy",
    shows: "Rules bent",
  },
  {
    at: "/remakes/rm-low-light/verdict",
    title: "Low light, ebb tide - Remakes - Understudy",
    shows: "Item by item",
  },
  {
    at: "/remakes/rm-low-light/write-up",
    title: "Low light, ebb tide - Remakes - Understudy",
    shows: "The episode",
  },
  { at: "/markets", title: "Markets - Understudy", shows: "Exchange rates" },
  { at: "/keep-safe", title: "Keep safe - Understudy", shows: "Keep safe" },
] as const;

/** The sample, in one click from an empty notebook. */
async function trySample(page: Page): Promise<void> {
  await page.goto("/");
  await expect(page).toHaveTitle("A new notebook - Desk - Understudy");
  await page.getByRole("button", { name: "Try the sample" }).click();
  await expect(page.getByText("This is the sample")).toBeVisible();
}

async function expectPlace(page: Page, { at, title, shows }: (typeof places)[number]): Promise<void> {
  await expect(page).toHaveTitle(title);
  await expect(page.getByRole("main").getByText(shows).filter({ visible: true }).first()).toBeVisible();
  expect(page.url().endsWith(at)).toBe(true);
}

/** Tab, until the focus is where it should be: the keys a person needs, none of the pointer's. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  const isThere = () => target.evaluate((element) => element === document.activeElement);
  for (let presses = 0; !(await isThere()); presses += 1) {
    expect(presses, "the focus gets there by Tab").toBeLessThan(80);
    await page.keyboard.press("Tab");
  }
  await expect(target).toBeInViewport();
}

const edge = (page: Page) => page.getByRole("navigation", { name: "Places" });

test("every place and tab opens at its address, says its title, and stays there when it is loaded again", async ({
  page,
}) => {
  await trySample(page);
  for (const place of places) {
    await step(page, place.at);
    await expectPlace(page, place);
    await page.reload(); // opens the address as if it had been typed
    await expectPlace(page, place);
  }
});

test("every place and tab is reached by the keyboard alone, and the back button leads back", async ({
  page,
}) => {
  await trySample(page);
  for (const [name, title] of [
    ["Kits", "Kits - Understudy"],
    ["Stash", "Stash - Understudy"],
    ["Remakes", "Remakes - Understudy"],
    ["Markets", "Markets - Understudy"],
    ["Keep safe", "Keep safe - Understudy"],
    ["Desk", / - Desk - Understudy$/],
  ] as const) {
    // The places stand at the end of the page, so the way back round is the shorter one.
    const link = edge(page).getByRole("link", { name, exact: true });
    for (let presses = 0; !(await link.evaluate((one) => one === document.activeElement)); presses += 1) {
      expect(presses, `${name} is reached by Shift and Tab`).toBeLessThan(40);
      await page.keyboard.press("Shift+Tab");
    }
    await page.keyboard.press("Enter");
    await expect(page).toHaveTitle(title);
    await expect(link).toHaveAttribute("aria-current", "page");
    // The title of a new page takes the focus, so that reading starts there.
    await expect(page.getByRole("heading", { level: 1 })).toBeFocused();
  }
  await page.goBack();
  await expect(page).toHaveTitle("Keep safe - Understudy");

  // A kit and a remake by name, then through their tabs.
  for (const [name, tabs] of [
    ["slow thaw", ["Prices", "Worth", "Contents"]],
    ["remake low light", ["Bench", "Verdict", "Write-up", "Stand-ins"]],
  ] as const) {
    await page.keyboard.press("/");
    await expect(page.getByRole("combobox", { name: "Find a kit, a supply, an act" })).toBeFocused();
    await page.keyboard.type(name);
    await page.keyboard.press("Enter");
    for (const tab of tabs) {
      const link = page.getByRole("main").getByRole("link", { name: tab, exact: true });
      await expect(link).toBeVisible();
      await tabTo(page, link);
      await page.keyboard.press("Enter");
      await expect(link).toHaveAttribute("aria-current", "page");
      await expect(page.getByRole("heading", { level: 1 })).toBeFocused();
    }
  }
});

test("the sample goes in one click, and undo brings it back whole", async ({ page }) => {
  await trySample(page);
  const facts = async () => {
    await edge(page).getByRole("link", { name: "Kits", exact: true }).click();
    await expect(page).toHaveTitle("Kits - Understudy");
    const kits = await page.getByRole("main").getByRole("heading", { level: 2 }).allTextContents();
    await edge(page).getByRole("link", { name: "Stash", exact: true }).click();
    await expect(page).toHaveTitle("Stash - Understudy");
    const stash = await page
      .getByText(/things in \d+ places/)
      .first()
      .textContent();
    await edge(page).getByRole("link", { name: "Desk", exact: true }).click();
    await expect(page).toHaveTitle(/ - Desk - Understudy$/);
    return { kits, stash };
  };
  const before = await facts();
  expect(before.kits).toHaveLength(10);

  await page.getByRole("button", { name: "Remove the sample" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("A new notebook");
  await expect(page.getByRole("button", { name: "Try the sample" })).toBeVisible();
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(page.getByText("This is the sample")).toBeVisible();
  expect(await facts()).toEqual(before);

  // Gone for good this time, also after loading again.
  await page.getByRole("button", { name: "Remove the sample" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("A new notebook");
  await expect(page.getByRole("banner")).toContainText(/Saved/);
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("A new notebook");
});
