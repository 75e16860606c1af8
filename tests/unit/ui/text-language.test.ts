import { afterEach, expect, it, vi } from "vitest";
import type { Remake } from "../../../src/engine/workbook/index.ts";
import { named, sampleBook } from "../sample.ts";

const book = sampleBook();
const thaw = named(book.remakes, "rm-slow-thaw");
const kit = named(book.kits, thaw.kit);

afterEach(() => vi.unstubAllGlobals());

/** The write-up's view on a page in a language, of the sample's remake with a change of its episode. */
async function viewOn(page: string, episode: Remake["episode"]) {
  vi.stubGlobal("navigator", { languages: [page] });
  vi.resetModules();
  const { writeUpView, versionOf } = await import("../../../src/ui/remakes/view/write-up.ts");
  const subject = { book, kit, remake: { ...thaw, episode: { ...thaw.episode, ...episode } } };
  const view = writeUpView(subject, "text", 5000);
  if (!view) throw new Error("the sample's kit is missing");
  return { view, kept: versionOf(subject, view.text, "2026-05-09") };
}

it.each([
  ["en", undefined, "en"],
  ["sv", undefined, "sv"],
  ["en", "sv", "sv"],
  ["sv", "en", "en"],
  ["sv", "no", "sv"],
])("on a page in %s with %s chosen, the text is in %s", async (page, chosen, language) => {
  const { view, kept } = await viewOn(page, chosen === undefined ? {} : { language: chosen });
  const said = { en: "9 of 9 from my own shelves", sv: "9 av 9 från mina egna hyllor" };
  expect(view.language).toBe(language);
  expect(view.text).toContain(language === "sv" ? said.sv : said.en);
  expect(view.html.startsWith('<div lang="sv">')).toBe(language === "sv");
  expect(kept.text).toBe(view.text);
});

it("what is still to do is said in the page's language, whatever the text is in", async () => {
  const { view } = await viewOn("sv", { language: "en", disclosure: null });
  expect(view.notNow).toMatch(/^Säg hur du fick materialet/);
  expect(view.text).toContain("from my own shelves");
});
