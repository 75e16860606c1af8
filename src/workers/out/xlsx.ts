import type { OwnList, WrittenCell } from "../../engine/intake/index.ts";
import { fixed, placesIn, textRows } from "./cells.ts";
import { declared, kept, widths, xmlText } from "./xml.ts";
import { type Part, zipOf } from "./zip.ts";

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packages = "http://schemas.openxmlformats.org/package/2006";
const types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Styles by their place: plain, head, text, day, then one for each count of decimals. */
const [headStyle, textStyle, dayStyle, firstPlaces] = [1, 2, 3, 4];

/** Numbers of our own formats begin here (ECMA-376 part 1, 18.8.30). */
const firstFormat = 164;

function styles(places: readonly number[]): string {
  const formats = ["yyyy\\-mm\\-dd", ...places.map(fixed)];
  const style = (format: number, font = 0) =>
    `<xf numFmtId="${format}" fontId="${font}" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1"/>`;
  const ours = formats.map((_, at) => style(firstFormat + at));
  const all = [style(0), style(49, 1), style(49), ...ours]; // 49 is "text"
  return declared(
    `<styleSheet xmlns="${main}">` +
      `<numFmts count="${formats.length}">${formats.map((code, at) => `<numFmt numFmtId="${firstFormat + at}" formatCode="${code}"/>`).join("")}</numFmts>` +
      `<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts>` +
      `<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>` +
      `<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>` +
      `<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
      `<cellXfs count="${all.length}">${all.join("")}</cellXfs>` +
      `<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>` +
      `</styleSheet>`,
  );
}

/** "A" … "Z", "AA" …: the name of a column, from 0. */
const columnName = (at: number): string =>
  (at < 26 ? "" : columnName(Math.floor(at / 26) - 1)) + String.fromCharCode(65 + (at % 26));

/** The days from 30 December 1899, as spreadsheets count from March 1900 on. */
const serial = (date: string): number => Date.parse(`${date}T00:00:00Z`) / 86_400_000 + 25_569;

const textCell = (at: string, text: string, style: number): string =>
  `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${xmlText(kept(text))}</t></is></c>`;

function cell(value: WrittenCell, at: string, places: readonly number[]): string {
  if (value === null) return "";
  if (typeof value === "string") return textCell(at, value, textStyle);
  if ("date" in value) return `<c r="${at}" s="${dayStyle}"><v>${serial(value.date)}</v></c>`;
  const style = value.places === null ? 0 : firstPlaces + places.indexOf(value.places);
  return `<c r="${at}" s="${style}"><v>${value.number}</v></c>`;
}

function sheet(list: OwnList, places: readonly number[]): string {
  const { heads, rows } = list;
  const columns = widths(textRows(list)).map(
    (width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`,
  );
  const head = heads.map((text, at) => textCell(`${columnName(at)}1`, text, headStyle)).join("");
  const body = rows.map((row, down) => {
    const cells = row.map((value, at) => cell(value, `${columnName(at)}${down + 2}`, places));
    return `<row r="${down + 2}">${cells.join("")}</row>`;
  });
  const last = `${columnName(Math.max(0, heads.length - 1))}${rows.length + 1}`;
  return declared(
    `<worksheet xmlns="${main}"><dimension ref="A1:${last}"/>` +
      `<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>` +
      `<cols>${columns.join("")}</cols>` +
      `<sheetData><row r="1">${head}</row>${body.join("")}</sheetData>` +
      `<autoFilter ref="A1:${last}"/></worksheet>`,
  );
}

const relation = (id: string, kind: string, target: string): string =>
  `<Relationship Id="${id}" Type="${office}/${kind}" Target="${target}"/>`;
const relations = (...all: readonly string[]): string =>
  declared(`<Relationships xmlns="${packages}/relationships">${all.join("")}</Relationships>`);
const override = (name: string, type: string): string =>
  `<Override PartName="${name}" ContentType="${types}.${type}+xml"/>`;

function parts(list: OwnList, name: string): readonly Part[] {
  const places = placesIn(list);
  return [
    {
      name: "[Content_Types].xml",
      text: declared(
        `<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>` +
          `${override("/xl/workbook.xml", "sheet.main")}${override("/xl/worksheets/sheet1.xml", "worksheet")}${override("/xl/styles.xml", "styles")}</Types>`,
      ),
    },
    { name: "_rels/.rels", text: relations(relation("r1", "officeDocument", "xl/workbook.xml")) },
    {
      name: "xl/workbook.xml",
      text: declared(
        `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="${xmlText(name)}" sheetId="1" r:id="r1"/></sheets></workbook>`,
      ),
    },
    {
      name: "xl/_rels/workbook.xml.rels",
      text: relations(
        relation("r1", "worksheet", "worksheets/sheet1.xml"),
        relation("r2", "styles", "styles.xml"),
      ),
    },
    { name: "xl/styles.xml", text: styles(places) },
    { name: "xl/worksheets/sheet1.xml", text: sheet(list, places) },
  ];
}

/**
 * A list as a spreadsheet of one sheet: texts as texts, whatever they begin with, numbers and days as such.
 * @param name of the sheet: up to 31 letters without []:*?/\
 * @see ECMA-376, part 1, 18 (SpreadsheetML)
 */
export const xlsxFile = (list: OwnList, name: string): Promise<Uint8Array<ArrayBuffer>> =>
  zipOf(parts(list, name));
