import type { Page } from "@playwright/test";

/** Every text that a page shows or says, but what is in a language of its own, and places in files. */
export const shownTexts = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const said = [
      "aria-label",
      "aria-description",
      "aria-roledescription",
      "aria-valuetext",
      "placeholder",
      "title",
      "alt",
    ];
    const isApart = (element: Element) => {
      const own = element.closest("[lang]");
      return own !== null && own !== document.documentElement;
    };
    const isShown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    const texts: string[] = [document.title];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const around = node.parentElement;
      if (!around || isApart(around) || around.closest("script, code")) continue;
      if (isShown(around) || around.closest("option, svg")) texts.push(node.nodeValue ?? "");
    }
    for (const element of document.body.querySelectorAll("*")) {
      if (isApart(element) || !isShown(element)) continue;
      for (const name of said) texts.push(element.getAttribute(name) ?? "");
      if (element instanceof HTMLInputElement && !["radio", "checkbox"].includes(element.type))
        texts.push(element.value);
    }
    return texts.map((text) => text.replaceAll(/\s+/g, " ").trim()).filter((text) => text !== "");
  });
