import type { Workbook } from "../../engine/workbook/index.ts";
import type { Act } from "../journal/index.ts";
import type { Database } from "./database.ts";
import { apartOf, largeKey, readAct, readBook, readLarge } from "./rows.ts";

/** What stands apart under a key, or undefined where nothing does. */
async function apartAt(db: Database, key: string): Promise<unknown> {
  const row = await db.large.get(key);
  return row === undefined ? undefined : readLarge(row);
}

/** The act of a row, with all that it changed. */
export async function wholeAct(db: Database, row: unknown): Promise<Act> {
  const key = apartOf(row);
  return readAct(row, key === null ? null : await apartAt(db, key));
}

/** The book that a snapshot kept; null where there is none. */
export async function bookOfSnapshot(db: Database, id: number): Promise<Workbook | null> {
  const book = await apartAt(db, largeKey("snapshot", id));
  return book === undefined ? null : readBook(book);
}
