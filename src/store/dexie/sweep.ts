import type { Workbook } from "../../engine/workbook/index.ts";
import { unmentioned } from "../photos.ts";
import type { Needed } from "../repository.ts";
import { bookOfSnapshot, wholeAct } from "./apart.ts";
import type { Database } from "./database.ts";
import { readHead } from "./rows.ts";

/**
 * Drops the photos that nothing needs, in the transaction it is called in. Snapshots and the journal are only read
 * where a photo is in doubt.
 * @returns how many went
 */
export async function sweep(db: Database, book: () => Promise<Workbook>, need: Needed): Promise<number> {
  const sums = await db.pictures.toCollection().primaryKeys();
  if (sums.length === 0) return 0;
  let loose = unmentioned(sums, (await book()).photos);
  for (const id of await db.snapshots.toCollection().primaryKeys()) {
    if (loose.length === 0) return 0;
    loose = unmentioned(loose, (await bookOfSnapshot(db, id))?.photos);
  }
  for (const row of await db.journal.reverse().toArray()) {
    if (loose.length === 0) return 0;
    const { id, at } = readHead(row);
    if (at < need.since && !need.acts.has(id)) continue;
    const { changes, inverse } = await wholeAct(db, row);
    loose = unmentioned(loose, [changes, inverse]);
  }
  await db.pictures.bulkDelete([...loose]);
  return loose.length;
}
