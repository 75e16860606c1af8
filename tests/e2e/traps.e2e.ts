import { Keyboard } from "./keyboard/keys.ts";
import { open } from "./places.ts";
import { expect, test } from "./with-sample.ts";

// Quality bar U2. Source: WCAG 2.2, 2.1.2 (no keyboard trap), 2.4.7 (focus visible), 2.4.11 (focus not obscured).

const looks = [
  { width: 1440, height: 900, places: ["/", "/kits/sp-2026-02/contents", "/markets"] },
  { width: 390, height: 700, places: ["/remakes/rm-low-light/write-up", "/keep-safe"] },
] as const;

for (const { width, height, places } of looks)
  test(`Tab leads through a page and out of it again at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const keys = new Keyboard(page);
    for (const place of places) {
      await open(page, place);
      keys.begin(place);
      const skip = page.getByRole("link", { name: "Skip to the page" });
      await keys.press("Tab");
      await expect(skip).toBeFocused();
      await keys.walk(skip);
    }
  });
