const names = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
]);

/** Text between tags, or in an attribute. What XML cannot hold has been written otherwise before. */
export const xmlText = (text: string): string => text.replace(/[&<>"]/g, (sign) => names.get(sign) ?? sign);

export const declared = (body: string): string =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${body}`;

/** A cell of text cannot run, so it stands as it is; but reading takes one apostrophe off before such a sign. */
const looksGuarded = /^'+[=+\-@\t\r\n\0]/;

export const kept = (text: string): string => (looksGuarded.test(text) ? `'${text}` : text);

/** How wide a column is, in letters: as its widest cell, within reason. */
export function widths(rows: readonly (readonly string[])[]): readonly number[] {
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return Array.from({ length: columns }, (_, at) => {
    const longest = rows.reduce((most, row) => Math.max(most, row[at]?.length ?? 0), 0);
    return Math.min(Math.max(longest + 2, 7), 44);
  });
}
