import type { OwnList, WrittenCell } from "../../engine/intake/index.ts";
import { placesIn, textRows } from "./cells.ts";
import { declared, kept, widths, xmlText } from "./xml.ts";
import { type Part, zipOf } from "./zip.ts";

const mime = "application/vnd.oasis.opendocument.spreadsheet";

const space = (name: string): string => `xmlns:${name}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`;
const spaces = `${["office", "table", "text", "style"].map(space).join(" ")} xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" office:version="1.3"`;

/** A width of one letter of the usual face, in millimetres. */
const letterMm = 2;

const cellStyle = (name: string, format: string | null, more = ""): string =>
  `<style:style style:name="${name}" style:family="table-cell"${format === null ? "" : ` style:data-style-name="${format}"`}>${more}</style:style>`;

const columnStyle = (width: number, at: number): string =>
  `<style:style style:name="w${at}" style:family="table-column"><style:table-column-properties style:column-width="${width * letterMm}mm"/></style:style>`;

/** Styles: "h" of heads, "t" of texts, "d" of days, "n2" of amounts with two decimals. */
const styles = (places: readonly number[], columns: readonly number[]): string =>
  [
    `<number:date-style style:name="fd"><number:year number:style="long"/><number:text>-</number:text><number:month number:style="long"/><number:text>-</number:text><number:day number:style="long"/></number:date-style>`,
    `<number:text-style style:name="ft"><number:text-content/></number:text-style>`,
    ...places.map(
      (count) =>
        `<number:number-style style:name="f${count}"><number:number number:min-integer-digits="1" number:decimal-places="${count}" number:min-decimal-places="${count}"/></number:number-style>`,
    ),
    cellStyle("h", "ft", `<style:text-properties fo:font-weight="bold"/>`),
    cellStyle("t", "ft"),
    cellStyle("d", "fd"),
    ...places.map((count) => cellStyle(`n${count}`, `f${count}`)),
    ...columns.map(columnStyle),
  ].join("");

/** Text of a paragraph: spaces that would be lost, and those at its ends, are said to be there (ODF 1.3, part 3, 6.1.3). */
const paragraph = (line: string): string =>
  xmlText(line).replace(/^ | {2,}| $/g, (run) => `<text:s text:c="${run.length}"/>`);

const paragraphs = (text: string): string =>
  text
    .split("\n")
    .map((line) => `<text:p>${paragraph(line)}</text:p>`)
    .join("");

const textCell = (text: string, style: string): string =>
  `<table:table-cell table:style-name="${style}" office:value-type="string">${paragraphs(kept(text))}</table:table-cell>`;

const gap = (count: number): string =>
  count === 1 ? "<table:table-cell/>" : `<table:table-cell table:number-columns-repeated="${count}"/>`;

/** The cells of a row; empty ones beside each other are one that stands for them, and none are at its end. */
function cells(row: readonly WrittenCell[]): readonly string[] {
  const written: string[] = [];
  let empty = 0;
  for (const value of row) {
    if (value === null) {
      empty += 1;
      continue;
    }
    if (empty > 0) written.push(gap(empty));
    empty = 0;
    written.push(cell(value));
  }
  return written;
}

function cell(value: Exclude<WrittenCell, null>): string {
  if (typeof value === "string") return textCell(value, "t");
  if ("date" in value)
    return `<table:table-cell table:style-name="d" office:value-type="date" office:date-value="${value.date}"><text:p>${value.date}</text:p></table:table-cell>`;
  const style = value.places === null ? "" : ` table:style-name="n${value.places}"`;
  return `<table:table-cell${style} office:value-type="float" office:value="${value.number}"><text:p>${value.number}</text:p></table:table-cell>`;
}

const row = (cells: readonly string[]): string => `<table:table-row>${cells.join("")}</table:table-row>`;

function content(list: OwnList, name: string): string {
  const columns = widths(textRows(list));
  return declared(
    `<office:document-content ${spaces}><office:automatic-styles>${styles(placesIn(list), columns)}</office:automatic-styles>` +
      `<office:body><office:spreadsheet><table:table table:name="${xmlText(name)}">` +
      `${columns.map((_, at) => `<table:table-column table:style-name="w${at}"/>`).join("")}` +
      `<table:table-header-rows>${row(list.heads.map((head) => textCell(head, "h")))}</table:table-header-rows>` +
      `${list.rows.map((values) => row(cells(values))).join("")}` +
      `</table:table></office:spreadsheet></office:body></office:document-content>`,
  );
}

const entry = (path: string, type: string): string =>
  `<manifest:file-entry manifest:full-path="${path}" manifest:media-type="${type}"/>`;

const parts = (list: OwnList, name: string): readonly Part[] => [
  { name: "mimetype", text: mime, stored: true }, // first and bare, so that a file can be told by it
  {
    name: "META-INF/manifest.xml",
    text: declared(
      `<manifest:manifest ${space("manifest")} manifest:version="1.3">${entry("/", mime)}${entry("content.xml", "text/xml")}${entry("styles.xml", "text/xml")}</manifest:manifest>`,
    ),
  },
  { name: "styles.xml", text: declared(`<office:document-styles ${spaces}/>`) },
  { name: "content.xml", text: content(list, name) },
];

/**
 * A list as an OpenDocument spreadsheet of one sheet: texts as texts, whatever they begin with, numbers and days as
 * such.
 * @see OASIS OpenDocument 1.3, parts 2 (packages) and 3 (schema)
 */
export const odsFile = (list: OwnList, name: string): Promise<Uint8Array<ArrayBuffer>> =>
  zipOf(parts(list, name));
