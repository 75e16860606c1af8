import type { Page } from "@playwright/test";
import { step } from "./places.ts";

/** Text that sticks out of the window, or that a box cuts off which hides what does not fit. */
export const lostIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { clientWidth: width, scrollWidth } = document.documentElement;
    const isHidden = (element: Element): boolean => {
      const { clipPath, position } = getComputedStyle(element);
      return !element.checkVisibility() || (clipPath !== "none" && position === "absolute");
    };
    const above = (element: Element | null): readonly Element[] =>
      element ? [element, ...above(element.parentElement)] : [];
    const lost = (text: Text): string | null => {
      const boxes = above(text.parentElement);
      if (!text.data.trim() || boxes.some((box) => isHidden(box) || box.tagName === "svg")) return null;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, top, bottom } = range.getBoundingClientRect();
      const box = boxes.find((element) => getComputedStyle(element).overflowX !== "visible");
      if (!box || box === document.documentElement || box === document.body)
        return right > width + 1 || left < -1 ? "sticks out" : null;
      if (["auto", "scroll"].includes(getComputedStyle(box).overflowX)) return null; // it can be scrolled to
      const edge = box.getBoundingClientRect();
      const isCut =
        right > edge.right + 2 || left < edge.left - 2 || bottom > edge.bottom + 2 || top < edge.top - 2;
      return isCut ? "is cut off" : null;
    };
    const found: string[] = scrollWidth > width ? [`the page is ${scrollWidth} px wide`] : [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const how = node instanceof Text ? lost(node) : null;
      if (how) found.push(`“${node.nodeValue}” in ${node.parentElement?.className} ${how}`);
    }
    return found;
  });

/** Every place, each with what of it is lost. */
export async function lostAt(page: Page, addresses: readonly string[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const address of addresses) {
    await step(page, address);
    found.push(...(await lostIn(page)).map((lost) => `${address}: ${lost}`));
  }
  return found;
}
