import { worthWords } from "../../words/worth.ts";
import { type LineRow, lineRows, lineTotals } from "./lines.ts";
import type { Scene } from "./scene.ts";
import { type Gain, type TierRow, tierRows } from "./tiers.ts";

/** A table as it goes to the clipboard. */
export type Copied = Readonly<{
  caption: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
}>;

const { tiers, lines } = worthWords;

const tierCells = (row: TierRow): readonly string[] => [
  row.name,
  row.goods,
  row.postage,
  row.border,
  row.cost,
  ...[row.list, row.street, row.wanted].map(({ amount, word }: Gain) => `${amount} ${word}`),
];

const where = ({ market, worth }: Scene): string => `${market.name}, ${worth.currency}`;

/** The table of tiers. */
export const copiedTiers = (scene: Scene): Copied => ({
  caption: `${tiers.title}, ${where(scene)}`,
  head: [
    tiers.tier,
    tiers.goods,
    tiers.postage,
    tiers.border,
    tiers.cost,
    tiers.list,
    tiers.shop,
    tiers.wanted,
  ],
  rows: tierRows(scene).map(tierCells),
});

const lineCells = (row: LineRow): readonly string[] => [
  String(row.number),
  row.name,
  row.list.amount ?? lines.noPrice,
  row.list.how ?? "",
  row.shop.amount ?? lines.noPrice,
  row.shop.how ?? "",
  row.wanted,
];

/** The table of lines, with its totals. */
export function copiedLines(scene: Scene): Copied {
  const total = lineTotals(scene);
  return {
    caption: `${lines.title}, ${where(scene)}`,
    head: [lines.number, lines.item, lines.list, lines.how, lines.shop, lines.how, lines.wanted],
    rows: [
      ...lineRows(scene).map(lineCells),
      ["", lines.together, total.list, "", total.shop, "", total.wanted],
    ],
  };
}

/** One row a line, cells parted by tabs, as spreadsheets take it. */
export const asPlain = ({ caption, head, rows }: Copied): string =>
  [[caption], head, ...rows].map((cells) => cells.map(oneLine).join("\t")).join("\n");

/** On one line, and never a formula: a spreadsheet would work out a name that begins with "=". */
const oneLine = (text: string): string =>
  text.replaceAll(/[\t\r\n]+/g, " ").replace(/^(?=[=@]|[+-](?!\d))/, "'");

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const htmlRow = (cells: readonly string[], cell: "td" | "th"): string =>
  `<tr>${cells.map((text) => `<${cell}>${escaped(text)}</${cell}>`).join("")}</tr>`;

/** The same as a table for word processors and mail. */
export const asHtml = ({ caption, head, rows }: Copied): string =>
  `<table><caption>${escaped(caption)}</caption><thead>${htmlRow(head, "th")}</thead>` +
  `<tbody>${rows.map((cells) => htmlRow(cells, "td")).join("")}</tbody></table>`;
