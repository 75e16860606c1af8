import { crc32, deflateRawSync } from "node:zlib";

/** One file of an archive to be made; `says` overrides what its directory says of it. */
export type Made = Readonly<{
  name: string;
  content: Uint8Array;
  stored?: boolean;
  says?: Readonly<{
    unpacked?: number;
    packed?: number;
    crc?: number;
    method?: number;
    flags?: number;
    offset?: number;
  }>;
}>;

const crcOf = (bytes: Uint8Array): number => (typeof crc32 === "function" ? crc32(bytes) : slowCrc(bytes));

/** CRC-32 bit by bit (ISO 3309), where the platform has none of its own. */
function slowCrc(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

/** An archive after PKWARE APPNOTE.TXT 6.3, honest or not. */
export function zipOf(files: readonly Made[], entries = files.length): Uint8Array {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const { name, content, stored = false, says = {} } of files) {
    const packed = stored ? Buffer.from(content) : deflateRawSync(content);
    const title = Buffer.from(name);
    const sum = says.crc ?? crcOf(content);
    const head = Buffer.alloc(30);
    head.writeUInt32LE(0x04034b50, 0);
    head.writeUInt16LE(20, 4);
    head.writeUInt16LE(says.flags ?? 0, 6);
    head.writeUInt16LE(says.method ?? (stored ? 0 : 8), 8);
    head.writeUInt32LE(sum, 14);
    head.writeUInt32LE(says.packed ?? packed.length, 18);
    head.writeUInt32LE(says.unpacked ?? content.length, 22);
    head.writeUInt16LE(title.length, 26);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    head.copy(entry, 6, 4, 30);
    entry.writeUInt32LE(says.offset ?? at, 42);
    directory.push(entry, title);
    parts.push(head, title, packed);
    at += head.length + title.length + packed.length;
  }
  const listed = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(entries, 8);
  end.writeUInt16LE(entries, 10);
  end.writeUInt32LE(listed.length, 12);
  end.writeUInt32LE(at, 16);
  return new Uint8Array(Buffer.concat([...parts, listed, end]));
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A workbook of one sheet, with this between its rows (ECMA-376, part 1, 18.3). */
export const xlsxOf = (rows: string, more: readonly Made[] = []): Uint8Array =>
  zipOf([
    {
      name: "[Content_Types].xml",
      content: bytes(
        '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>',
      ),
    },
    {
      name: "xl/workbook.xml",
      content: bytes(
        '<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>',
      ),
    },
    {
      name: "xl/_rels/workbook.xml.rels",
      content: bytes(
        '<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>',
      ),
    },
    {
      name: "xl/worksheets/sheet1.xml",
      content: bytes(
        `<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`,
      ),
    },
    ...more,
  ]);

/** A cell of text in an XLSX sheet. */
export const textCell = (text: string, at = ""): string =>
  `<c${at && ` r="${at}"`} t="inlineStr"><is><t>${text}</t></is></c>`;

/** An OpenDocument sheet with these rows (ODF 1.3, part 3, 9.1). */
export const odsOf = (rows: string): Uint8Array =>
  zipOf([
    {
      name: "mimetype",
      content: bytes("application/vnd.oasis.opendocument.spreadsheet"),
      stored: true,
    },
    {
      name: "META-INF/manifest.xml",
      content: bytes(
        '<?xml version="1.0"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>',
      ),
    },
    {
      name: "content.xml",
      content: bytes(
        `<?xml version="1.0"?><office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet><table:table table:name="One">${rows}</table:table></office:spreadsheet></office:body></office:document-content>`,
      ),
    },
  ]);
