// The cells of a flat OpenDocument spreadsheet as LibreOffice writes it: their type, their value as text, and whether
// they are formulas.

const entities = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

const plain = (xml) =>
  xml.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (_, hex, digits, name) =>
    name ? entities[name] : String.fromCodePoint(Number.parseInt(hex ?? digits, hex ? 16 : 10)),
  );

/** The text of a paragraph: runs of spaces, tabs and breaks are elements of their own (ODF 1.3, part 3, 6.1). */
const paragraph = (xml) =>
  plain(
    xml
      .replace(/<text:s(?: text:c="(\d+)")?\/>/g, (_, count) => " ".repeat(Number(count ?? 1)))
      .replace(/<text:tab\/>/g, "\t")
      .replace(/<text:line-break\/>/g, "\n")
      .replace(/<[^>]+>/g, ""),
  );

const textOf = (xml) =>
  [...xml.matchAll(/<text:p\/>|<text:p[^>]*>(.*?)<\/text:p>/gs)]
    .map(([, inner]) => paragraph(inner ?? ""))
    .join("\n");

const attribute = (tag, name) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];

function cellOf(tag, inner) {
  const type = attribute(tag, "office:value-type") ?? "none";
  const text =
    type === "float"
      ? String(Number(attribute(tag, "office:value")))
      : type === "date"
        ? attribute(tag, "office:date-value")
        : textOf(inner);
  return { type, text, formula: attribute(tag, "table:formula") !== undefined };
}

function cellsOfRow(xml) {
  const cells = [];
  for (const [, tag, inner = ""] of xml.matchAll(
    /<table:(?:covered-)?table-cell((?:\s[^>]*?)?)(?:\/>|>(.*?)<\/table:(?:covered-)?table-cell>)/gs,
  )) {
    const count = Number(attribute(tag, "table:number-columns-repeated") ?? 1);
    if (inner === "" && count > 100) break; // the empty rest of the sheet
    for (let at = 0; at < count; at += 1) cells.push(cellOf(tag, inner));
  }
  return cells;
}

/** Row by row; the empty rows that end a sheet are left out. */
export function cellsOfFlat(xml) {
  const rows = [];
  for (const [, tag, inner] of xml.matchAll(/<table:table-row((?:\s[^>]*?)?)>(.*?)<\/table:table-row>/gs)) {
    const count = Number(attribute(tag, "table:number-rows-repeated") ?? 1);
    if (count > 1_000) break;
    for (let at = 0; at < count; at += 1) rows.push(cellsOfRow(inner));
  }
  return rows;
}
