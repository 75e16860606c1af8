import type { Workbook } from "../../engine/workbook/index.ts";
import { type Picture, replaceBook, type Stored } from "../../store/index.ts";
import { undoLast } from "../app/do-act.ts";
import { sayFault } from "../app/say-fault.ts";
import { notify } from "../parts/index.ts";

/** Says what became of an act on the whole book, with Undo. */
export function tell(done: Stored<null>, told: string): void {
  if (done.ok) notify(told, () => void undoLast());
  else sayFault(done.fault, true);
}

/** Replaces everything as one act, with the photos that come with it. */
export async function replaceWith(
  book: Workbook,
  label: string,
  told: string,
  pictures: readonly Picture[] = [],
): Promise<void> {
  tell(await replaceBook(book, label, pictures), told);
}
