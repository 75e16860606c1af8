import type { Page } from "@playwright/test";

/** A colour that text is set in, with the text, or a ground that is not the paper's own. */
export type Tone = Readonly<{ what: string; colour: string }>;

/** The colours of all text that can be seen, and of all grounds. */
export const seenIn = (page: Page): Promise<Readonly<{ inks: readonly Tone[]; grounds: readonly Tone[] }>> =>
  page.evaluate(() => {
    const isSeen = (element: Element): boolean => {
      const { clipPath, visibility } = getComputedStyle(element);
      return element.checkVisibility() && visibility === "visible" && clipPath === "none";
    };
    const isShown = (element: Element | null): boolean =>
      element === null || (isSeen(element) && isShown(element.parentElement));
    const inks: { what: string; colour: string }[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const { parentElement: on } = node;
      if (!node.nodeValue?.trim() || !on || !isShown(on) || on.closest("option")) continue;
      const style = getComputedStyle(on);
      inks.push({ what: node.nodeValue.trim(), colour: on.closest("svg") ? style.fill : style.color });
    }
    for (const field of document.querySelectorAll<HTMLInputElement>("input, select, textarea"))
      if (isShown(field)) inks.push({ what: field.value, colour: getComputedStyle(field).color });
    const grounds = [...document.querySelectorAll("*")]
      .filter((element) => !element.closest("svg") && isShown(element))
      .map((element) => ({
        what: `${element.tagName} ${element.className}`,
        colour: getComputedStyle(element).backgroundColor,
      }));
    return { inks, grounds };
  });

/** Puts marks of one pixel where each row begins and ends, cell by cell, without moving anything; how many rows. */
export const markRows = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const mark = (text: string) => {
      const element = document.createElement("span");
      element.textContent = text;
      Object.assign(element.style, { position: "absolute", font: "1px sans-serif", whiteSpace: "nowrap" });
      return element;
    };
    const rows = [...document.querySelectorAll<HTMLElement>("tbody tr, tfoot tr, main li")].filter(
      (row) =>
        row.checkVisibility() && !row.closest("nav, svg, [role='listbox']") && !row.querySelector("tr, li"),
    );
    const cells = rows.flatMap((row, index) =>
      (row.matches("tr") ? [...row.children] : [row])
        .filter((cell) => cell.checkVisibility())
        .map((cell) => ({ cell, index })),
    );
    for (const { cell, index } of cells) {
      cell.prepend(mark(`[${index}`));
      cell.append(mark(`${index}]`));
    }
    return rows.length;
  });
