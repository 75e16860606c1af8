// A spreadsheet would run a cell that begins like this as a formula. One that has the mark already gets another, so that
// reading can take one off again.
const startsFormula = /^'*[=+\-@\t\r\n\0]/;
const isNumber = /^[+-]?\d+(\.\d+)?$/;

/** One field of RFC 4180, made inert where a spreadsheet would take it for a formula; reading takes the mark off again. */
function field(text: string): string {
  const inert = startsFormula.test(text) && !isNumber.test(text) ? `'${text}` : text;
  return /[",;\t\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

/** One line of CSV. */
export const csvLine = (cells: readonly string[]): string => `${cells.map(field).join(",")}\r\n`;
