import type { Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Removed } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { thenMend } from "./remove.ts";

/** Brings back something removed, as it was then, last in its list; without mentions of what is gone since. */
export const bringBack = (book: Workbook, { list, id, record }: Removed): ActDraft => ({
  label: words.bringBack,
  changes: thenMend(book, [{ op: "put", list, id, record }]),
});
