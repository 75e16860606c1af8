import { Keyboard } from "./keyboard/keys.ts";
import { open } from "./places.ts";
import { expect, test } from "./watched.ts";

// Quality bar U3: an item costs at most 12 keystrokes beyond its own words; 50 items in a row without a pointer.
// What counts is said in keyboard.e2e.ts.

const mostKeys = 12;

const colours = [
  "moss",
  "rust",
  "lichen",
  "sand",
  "kelp",
  "brick",
  "slate",
  "plum",
  "straw",
  "pine",
] as const;

/** Fifty things, no two of one name. All are invented. */
const things = colours.flatMap((colour, index) => [
  `gouache tube ${colour} 15 ml`,
  `wax colour pencil ${colour}`,
  `alcohol marker ${colour}`,
  `watercolour half pan ${colour}`,
  `soft pastel ${colour} ${index + 1}`,
]);

// The bar at the foot and the notice are there in a window of this size: nothing may be behind them.
test.use({ viewport: { width: 768, height: 700 } });

test("fifty things in a row cost one key each, and the focus stays where the next is written", async ({
  page,
}) => {
  const keys = new Keyboard(page);
  await open(page, "/");
  keys.begin("to the stash");
  await keys.find("add to", "Add to the stash");
  for (const thing of things) {
    keys.begin(thing);
    await keys.write("What you have, as you would say it", thing, "at once");
    await keys.press("Enter");
    expect(keys.counts.get(thing)).toBeLessThanOrEqual(mostKeys);
  }
  await expect(page.getByRole("banner")).toContainText(/Saved/);
  await open(page, "/stash?view=list");
  await expect(page.getByRole("table")).toHaveAttribute("aria-rowcount", String(things.length + 1));
});

test("a thing put right as it is written, with its place, costs no more than twelve", async ({ page }) => {
  const keys = new Keyboard(page);
  await open(page, "/stash");
  keys.begin("to the field");
  await keys.find("add to", "Add to the stash");
  keys.begin("a thing");
  await keys.write("What you have, as you would say it", "gouache tube moss 15 ml");
  // Its tube was meant to be a pan: the reading is gone to, and another is chosen.
  await keys.pressTo(page.getByRole("button", { name: /^tube: / }));
  await keys.press("Enter");
  await expect(page.locator(":focus")).toHaveRole("radio");
  await keys.press("ArrowDown");
  await keys.pressTo(page.getByRole("combobox", { name: "Where these live" }));
  await keys.write("Where these live", "blue tin");
  await keys.press("Tab", "Enter");
  await expect(page.getByRole("status").filter({ hasText: "Gouache, moss is in the stash" })).toBeVisible();
  console.log(`a thing put right: ${keys.counts.get("a thing")} keystrokes`);
  expect(keys.counts.get("a thing")).toBeLessThanOrEqual(mostKeys);
});
