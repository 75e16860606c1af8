import { clean } from "./clean.ts";
import { type Block, isFull, type Writeup } from "./document.ts";

const escapeText = (text: string): string =>
  clean(text).replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("'", "&#39;");

const element = (name: string, inner: string): string => `<${name}>${inner}</${name}>`;

function blockMarkup(block: Block): string {
  if (block.kind === "lines")
    return element("ul", block.lines.map((line) => element("li", escapeText(line))).join(""));
  const row = (cells: readonly string[], cell: "th" | "td") =>
    element(
      "tr",
      cells
        .map(
          (text, i) =>
            `<${cell}${block.numeric.includes(i) ? ' align="right"' : ""}>${escapeText(text)}</${cell}>`,
        )
        .join(""),
    );
  return element(
    "table",
    element("thead", row(block.head, "th")) +
      element("tbody", block.rows.map((cells) => row(cells, "td")).join("")),
  );
}

/** The whole write-up as an HTML fragment for the clipboard: no scripts, no styles, text as text. */
export function asHtml(writeup: Writeup): string {
  const sections = writeup.sections
    .filter(isFull)
    .map(
      ({ title, blocks }) =>
        (title === null ? "" : element("h2", escapeText(title))) + blocks.map(blockMarkup).join("\n"),
    );
  const whole = [element("p", element("strong", escapeText(writeup.opening))), ...sections].join("\n");
  // English is what a page is taken for; in any other language a reader aloud has to be told.
  return writeup.language === "en" ? `${whole}\n` : `<div lang="${writeup.language}">\n${whole}\n</div>\n`;
}
