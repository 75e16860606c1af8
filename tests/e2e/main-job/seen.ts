import type { Locator } from "@playwright/test";

/** The text of an element as a person sees it: without what is only read out, spaces as single ones. */
export const seen = (element: Locator): Promise<string> =>
  element.evaluate((root) => {
    let words = "";
    let last: Element | null = null;
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const box = node.parentElement;
      // What is only read out is kept one pixel wide.
      if (!box?.checkVisibility() || box.getBoundingClientRect().width <= 1) continue;
      words += `${box === last ? "" : " "}${node.textContent}`;
      last = box;
    }
    return words.replace(/\s+/g, " ").trim();
  });

export const seenIn = async (elements: Locator): Promise<readonly string[]> =>
  Promise.all((await elements.all()).map(seen));

/** The rows under a table's head, cell by cell. */
export async function rowsOf(table: Locator): Promise<readonly (readonly string[])[]> {
  const rows = await table.getByRole("row").all();
  return Promise.all(rows.slice(1).map((row) => seenIn(row.locator("th, td"))));
}
