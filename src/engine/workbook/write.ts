import type { Workbook } from "./schema.ts";

/** The workbook as the text of a file: UTF-8 JSON, indented, unknown fields included. */
export const writeWorkbook = (workbook: Workbook): string => `${JSON.stringify(workbook, null, 2)}\n`;
