import { expect, type Locator, type Page } from "@playwright/test";

/** What is wrong with where the focus is; null where it is seen, and not covered. */
const faultOfFocus = (page: Page): Promise<string | null> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return "the focus is lost";
    const name = `${at.tagName} “${at.getAttribute("aria-label") ?? at.textContent?.slice(0, 40)}” ${at.id}`;
    const isMarked = (element: Element): boolean => {
      const { outlineStyle, outlineWidth, borderBottomWidth, borderBottomColor, textDecorationLine } =
        getComputedStyle(element);
      const isRinged = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
      // A field's writing line thickens; a title, which is no control, is underlined.
      const isLined = Number.parseFloat(borderBottomWidth) >= 2 && borderBottomColor !== "rgba(0, 0, 0, 0)";
      return isRinged || isLined || (element.tagName === "H1" && textDecorationLine.includes("underline"));
    };
    // A file is picked with the label that lies over its field, and that wears the ring.
    const label = at.matches("input[type=file]") ? at.nextElementSibling : null;
    if (!isMarked(label ?? at)) return `${name} has the focus and does not show it`;
    const { left, top, width, height } = at.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + Math.min(height, innerHeight) / 2];
    if (x < 0 || y < 0 || x > innerWidth || y > innerHeight) return `${name} is out of sight`;
    const over = document.elementFromPoint(x, y);
    // The brackets of a typed line lie on the line itself.
    const isOnLine = at.matches("textarea") && at.parentElement?.contains(over);
    const isOwn = over && (over.contains(at) || at.contains(over) || isOnLine);
    return isOwn ? null : `${name} is covered by ${over?.tagName} ${over?.className}`;
  });

/** The keys of one press: "Control+/" and "Shift+Tab" are two each. */
const keysIn = (press: string): number => press.split("+").filter(Boolean).length;

/**
 * A person at the keyboard: every key is counted, and after each the focus is somewhere, is seen, and is not
 * covered. What they write in their own words is not counted.
 */
export class Keyboard {
  readonly #page: Page;
  readonly #steps = new Map<string, number>();
  #step = "";

  constructor(page: Page) {
    this.#page = page;
  }

  /** From here on keys count for this step of the job. */
  begin(step: string): void {
    this.#step = step;
    this.#steps.set(step, 0);
  }

  get counts(): ReadonlyMap<string, number> {
    return this.#steps;
  }

  get total(): number {
    return [...this.#steps.values()].reduce((sum, count) => sum + count, 0);
  }

  async #look(after: string): Promise<void> {
    // A page that loads has the focus once it stands; it is asked for again for as long as that takes.
    await expect
      .poll(() => faultOfFocus(this.#page), { message: `${this.#step}: after ${after}`, timeout: 5_000 })
      .toBeNull();
  }

  #count(keys: number): void {
    this.#steps.set(this.#step, (this.#steps.get(this.#step) ?? 0) + keys);
  }

  /** Presses keys one after the other. */
  async press(...presses: readonly string[]): Promise<void> {
    for (const press of presses) {
      await this.#page.keyboard.press(press);
      this.#count(keysIn(press));
      await this.#look(press);
    }
  }

  /** Writes the person's own words, key by key, once the focus is in the field for them; they are not counted. */
  async write(field: string, words: string, how: "key by key" | "at once" = "key by key"): Promise<void> {
    await expect(this.#page.locator(":focus")).toHaveAccessibleName(field);
    if (how === "at once") await this.#page.keyboard.insertText(words);
    else await this.#page.keyboard.type(words);
    await this.#look(`“${words}”`);
  }

  /** Pastes the person's own words: two keys. */
  async paste(words: string): Promise<void> {
    await this.#page.evaluate((text) => navigator.clipboard.writeText(text), words);
    await this.press("Control+v");
  }

  /** Names a place, a thing or an act in the search field, as briefly as will do: every letter counts. */
  async find(letters: string, found: string): Promise<void> {
    await this.press("Control+/");
    await this.#page.keyboard.type(letters);
    this.#count(letters.length);
    await this.#look(`“${letters}”`);
    await expect(this.#page.getByRole("search").getByRole("option", { selected: true })).toContainText(found);
    await this.press("Enter");
  }

  /** Tab after Tab, until the focus has left the page and is at its first stop again. */
  async walk(first: Locator): Promise<void> {
    const isThere = () => first.evaluate((one) => one === document.activeElement);
    const most = 400;
    let left = 0;
    for (let presses = 0; presses < most; presses += 1) {
      await this.#page.keyboard.press("Tab");
      if (await isThere()) return;
      // Once, between the last stop and the first, the focus is the browser's own.
      if (left === 0 && (await this.#hasLeft())) left += 1;
      else await this.#look("Tab");
    }
    throw new Error(`${this.#step}: ${most} times Tab do not lead out of it`);
  }

  readonly #hasLeft = () => this.#page.evaluate(() => document.activeElement === document.body);

  /** Presses a key until the focus is on a thing. */
  async pressTo(target: Locator, key = "Tab", most = 40): Promise<void> {
    for (let presses = 0; !(await target.evaluate((one) => one === document.activeElement)); presses += 1) {
      expect(presses, `${this.#step}: the focus gets to ${target} by ${key}`).toBeLessThan(most);
      await this.press(key);
    }
  }
}
