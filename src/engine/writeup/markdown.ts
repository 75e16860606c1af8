import { clean } from "./clean.ts";
import { type Block, isFull, type Writeup } from "./document.ts";

/** Signs that would start markup are escaped, so that a name is shown as it was typed. */
const escapeSigns = (text: string): string => clean(text).replace(/[\\`*_[\]|#~]/g, "\\$&");

function blockText(block: Block): string {
  if (block.kind === "lines") return block.lines.map((line) => `- ${escapeSigns(line)}`).join("\n");
  const row = (cells: readonly string[]) => `| ${cells.map(escapeSigns).join(" | ")} |`;
  const rule = `|${block.head.map((_, i) => (block.numeric.includes(i) ? " ---: |" : " --- |")).join("")}`;
  return [row(block.head), rule, ...block.rows.map(row)].join("\n");
}

/** The whole write-up as Markdown, with tables. */
export function asMarkdown(writeup: Writeup): string {
  const sections = writeup.sections
    .filter(isFull)
    .map(({ title, blocks }) =>
      [...(title === null ? [] : [`## ${escapeSigns(title)}`]), ...blocks.map(blockText)].join("\n\n"),
    );
  return `${[`**${escapeSigns(writeup.opening)}**`, ...sections].join("\n\n")}\n`;
}
