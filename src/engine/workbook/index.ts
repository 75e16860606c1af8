/**
 * Workbook: the file format. Reads a file whole or refuses it whole with every fault placed, writes it back
 * with nothing dropped, and says what is odd without being wrong.
 *
 * Not here What the figures mean: `price/`, `worth/`, `match/`.
 */
export { canonicalJson } from "./canonical.ts";
export { emptyWorkbook } from "./empty.ts";
export { jsonSchema } from "./json-schema.ts";
export { noticesOf } from "./notices.ts";
export { type Reading, readWorkbook, sizeLimitBytes } from "./read.ts";
export { type Remake, textLanguage } from "./remake.ts";
export {
  type Photo,
  type Request,
  type Workbook,
  WorkbookSchema,
} from "./schema.ts";
export { writeWorkbook } from "./write.ts";
