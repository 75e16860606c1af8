import { readFileSync } from "node:fs";
import { readWorkbook, type Workbook } from "../../src/engine/workbook/index.ts";

export const samplePath = "fixtures/sample.understudy.json";

/** The sample workbook, read as the app reads it. */
export function sampleBook(): Workbook {
  const reading = readWorkbook(readFileSync(samplePath, "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.workbook;
}

/** The record of that id; a test that asks for one that is not there is wrong. */
export function named<T extends { id: string }>(records: readonly T[] | null | undefined, id: string): T {
  const found = records?.find((record) => record.id === id);
  if (!found) throw new Error(`the test names "${id}", which the workbook lacks`);
  return found;
}
