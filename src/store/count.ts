import type { Workbook } from "../engine/workbook/index.ts";
import { listNames } from "./journal/index.ts";

/** How many records a book holds, over all lists. */
export const recordsIn = (book: Workbook): number =>
  listNames.reduce((sum, list) => sum + (book[list]?.length ?? 0), 0);

/** Whether there is nothing of the person's in it. A name and a home may have been given. */
export const isEmpty = (book: Workbook): boolean => recordsIn(book) === 0;
