import { formatName, formatVersion, type Workbook } from "./schema.ts";

/** A workbook with nothing in it yet. */
export const emptyWorkbook = (): Workbook => ({ format: formatName, version: formatVersion });
