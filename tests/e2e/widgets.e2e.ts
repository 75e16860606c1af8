import type { Locator, Page } from "@playwright/test";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U6. Source: WAI-ARIA Authoring Practices Guide, its patterns Combobox (editable, list autocomplete with
// manual selection), Menu Button, Dialog (Modal), Radio Group and Disclosure. Pages side by side are links, as the
// guide's Landmarks page has navigation, and not its tabs: each has an address.

const press = async (page: Page, ...keys: readonly string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};

/** Where a text field's caret is. */
const caret = (field: Locator) =>
  field.evaluate((one) => (one instanceof HTMLInputElement ? one.selectionStart : null));

test("a chooser is a combobox: arrows move through its list, Enter takes, Escape closes", async ({
  page,
}) => {
  await open(page, "/parts");
  const box = page.getByRole("combobox", { name: "Kind" });
  const list = page.getByRole("listbox", { name: "Kind" });
  const current = list.getByRole("option", { selected: true });
  await box.focus();
  await expect(box).toHaveAttribute("aria-autocomplete", "list");
  await expect(box).toHaveAttribute("aria-expanded", "false");
  await expect(list).toBeHidden();

  await press(page, "ArrowDown");
  await expect(box).toHaveAttribute("aria-expanded", "true");
  await expect(box).toHaveAttribute("aria-controls", (await list.getAttribute("id")) ?? "none");
  await expect(list).toMatchAriaSnapshot(`
    - listbox "Kind":
      - option "gouache" [selected]
      - option "colour pencil"
      - option "liner"
  `);
  for (const [key, name] of [
    ["ArrowDown", "colour pencil"],
    ["ArrowUp", "gouache"],
    ["ArrowUp", "liner"], // round the end
    ["ArrowDown", "gouache"],
  ] as const) {
    await press(page, key);
    await expect(current).toHaveText(name);
    await expect(box).toHaveAttribute("aria-activedescendant", (await current.getAttribute("id")) ?? "none");
    await expect(box).toBeFocused(); // the focus itself never leaves the field
  }

  await press(page, "Escape");
  await expect(list).toBeHidden();
  await expect(box).toHaveValue("");
  await expect(box).not.toHaveAttribute("aria-activedescendant");

  await page.keyboard.type("l");
  await expect(list.getByRole("option")).toHaveText(["liner", "colour pencil"]);
  await expect(current).toHaveCount(0); // selected by hand only
  await press(page, "ArrowDown", "Enter");
  await expect(box).toHaveValue("liner");
  await expect(box).toHaveAttribute("aria-expanded", "false");
  await expect(box).toBeFocused();

  // In a field that can be written in, Home and End belong to the text.
  await press(page, "Home");
  expect(await caret(box)).toBe(0);
  await press(page, "End");
  expect(await caret(box)).toBe("liner".length);
});

test("the search field is a combobox whose first find is ready to be taken", async ({ page }) => {
  await open(page, "/parts");
  await press(page, "/");
  const box = page.getByRole("combobox", { name: "Find a kit, a supply, an act" });
  await expect(box).toBeFocused();
  await page.keyboard.type("low light");
  await expect(page.getByRole("search").getByRole("option").first()).toHaveAttribute("aria-selected", "true");
  await press(page, "ArrowDown");
  await expect(page.getByRole("search").getByRole("option").nth(1)).toHaveAttribute("aria-selected", "true");
  await press(page, "Escape");
  await expect(box).toHaveAttribute("aria-expanded", "false");
  await expect(box).toHaveValue("low light");
});

test("a menu opens on its first act, goes round its ends, and gives the focus back", async ({ page }) => {
  await open(page, "/parts");
  const button = page.getByRole("button", { name: "More acts" });
  const menu = page.getByRole("menu", { name: "More acts" });
  const item = (name: string) => menu.getByRole("menuitem", { name });
  await expect(button).toHaveAttribute("aria-haspopup", "menu");
  for (const key of ["Enter", "Space", "ArrowDown"]) {
    await button.focus();
    await press(page, key);
    await expect(item("Set aside")).toBeFocused();
    await expect(button).toHaveAttribute("aria-expanded", "true");
    await press(page, "Escape");
    await expect(menu).toBeHidden();
    await expect(button).toBeFocused();
    await expect(button).toHaveAttribute("aria-expanded", "false");
  }
  await press(page, "Enter");
  await expect(menu).toMatchAriaSnapshot(`
    - menu "More acts":
      - menuitem "Set aside"
      - menuitem "Make it a basic"
      - menuitem "Take it out"
  `);
  for (const [key, name] of [
    ["ArrowUp", "Take it out"],
    ["ArrowDown", "Set aside"],
    ["End", "Take it out"],
    ["Home", "Set aside"],
    ["ArrowDown", "Make it a basic"],
  ] as const) {
    await press(page, key);
    await expect(item(name)).toBeFocused();
  }
  await press(page, "Enter");
  await expect(menu).toBeHidden();
  await expect(page.getByText("Make it a basic: done.")).toBeVisible();
  await expect(button).toBeFocused();
  await press(page, "Enter");
  await expect(item("Set aside")).toBeFocused();
  await press(page, "Tab"); // leaves it
  await expect(menu).toBeHidden();
});

test("a dialog holds the focus, is called by its title, and gives the focus back", async ({ page }) => {
  await open(page, "/parts");
  const opener = page.getByRole("button", { name: "Open the dialog" });
  const dialog = page.getByRole("dialog", { name: "Restore the copy of 3 May?" });
  for (const leave of ["Escape", "Enter"]) {
    await opener.focus();
    await press(page, "Enter");
    await expect(dialog).toMatchAriaSnapshot(`
      - dialog "Restore the copy of 3 May?":
        - heading "Restore the copy of 3 May?" [level=2]
        - button "Restore it"
        - button "Keep what is here"
    `);
    for (const name of ["Restore it", "Keep what is here", "Restore it"]) {
      await expect(dialog.getByRole("button", { name })).toBeFocused();
      // Past its ends the focus is the browser's own, never the page's behind it.
      await press(page, "Tab");
      if (await page.evaluate(() => document.activeElement === document.body)) await press(page, "Tab");
    }
    await press(page, leave);
    await expect(dialog).toBeHidden();
    await expect(opener).toBeFocused();
  }
});

test("choices are one stop of the Tab key, and the arrows choose", async ({ page }) => {
  await open(page, "/parts");
  const group = page.getByRole("group", { name: "Surface" });
  const radio = (name: string) => group.getByRole("radio", { name });
  await radio("medium").focus();
  await press(page, "ArrowDown");
  await expect(radio("rough")).toBeChecked();
  await expect(radio("rough")).toBeFocused();
  await press(page, "ArrowUp", "ArrowUp");
  await expect(radio("smooth")).toBeChecked();
  await press(page, "Tab");
  await expect(page.getByRole("checkbox", { name: "fetched", exact: true })).toBeFocused();
  await press(page, "Shift+Tab");
  await expect(radio("smooth")).toBeFocused();
});

test("why? opens and closes what it names, and keeps the focus", async ({ page }) => {
  await open(page, "/parts");
  const why = page.getByRole("button", { name: /, Gouache, moss$/ }).first();
  const panel = page.getByText("0.76 for the traits");
  await why.focus();
  for (const key of ["Enter", "Space"]) {
    await press(page, key);
    await expect(why).toHaveAttribute("aria-expanded", "true");
    await expect(panel).toBeVisible();
    const id = await why.getAttribute("aria-controls");
    await expect(page.locator(`[id="${id}"]`)).toContainText("0.76 for the traits");
    await press(page, key);
    await expect(why).toHaveAttribute("aria-expanded", "false");
    await expect(panel).toBeHidden();
    await expect(why).toBeFocused();
  }
});

test("pages side by side are links in a navigation of their own, and say which is open", async ({ page }) => {
  await open(page, "/kits/sp-2026-02/prices");
  const pages = page.getByRole("navigation", { name: "Slow thaw" });
  await expect(pages.getByRole("link")).toHaveText(["Contents", "Prices", "Worth"]);
  await expect(pages.getByRole("link", { name: "Prices" })).toHaveAttribute("aria-current", "page");
  await expect(page.getByRole("tab")).toHaveCount(0);
  await pages.getByRole("link", { name: "Worth" }).focus();
  await press(page, "Enter");
  await expect(pages.getByRole("link", { name: "Worth" })).toHaveAttribute("aria-current", "page");
  await expect(page).toHaveURL(/\/worth$/);
});

test("the stash laid out by colour is one stop of the Tab key, and the arrows go where they point", async ({
  page,
}) => {
  await open(page, "/stash");
  const stops = page.locator("a[data-slot][tabindex='0']");
  await expect(stops).toHaveCount(1);
  await stops.focus();
  const middle = () =>
    page.locator(":focus").evaluate((one) => {
      const { left, top, width, height } = one.getBoundingClientRect();
      return { x: left + width / 2 + scrollX, y: top + height / 2 + scrollY };
    });
  const start = await middle();
  await press(page, "ArrowRight");
  const right = await middle();
  expect(right.x).toBeGreaterThan(start.x);
  await press(page, "ArrowDown");
  expect((await middle()).y).toBeGreaterThan(right.y);
  await expect(stops).toHaveCount(1);
  await expect(stops).toBeFocused();
});
