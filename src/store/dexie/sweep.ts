import type { Workbook } from "../../engine/workbook/index.ts";
import { unmentioned } from "../photos.ts";
import type { Needed } from "../repository.ts";
import type { Database } from "./database.ts";
import { readAct, readSnapshot } from "./rows.ts";

/**
 * Drops the photos that nothing needs, in the transaction it is called in. Snapshots and the journal are only read
 * where a photo is in doubt.
 * @returns how many went
 */
export async function sweep(db: Database, book: Workbook, need: Needed): Promise<number> {
  const sums = await db.pictures.toCollection().primaryKeys();
  let loose = unmentioned(sums, book.photos);
  if (loose.length === 0) return 0;
  for (const row of await db.snapshots.toArray()) loose = unmentioned(loose, readSnapshot(row).book.photos);
  await db.journal
    .reverse()
    .until(() => loose.length === 0)
    .each((row) => {
      const { id, at, changes, inverse } = readAct(row);
      if (at >= need.since || need.acts.has(id)) loose = unmentioned(loose, [changes, inverse]);
    });
  await db.pictures.bulkDelete([...loose]);
  return loose.length;
}
