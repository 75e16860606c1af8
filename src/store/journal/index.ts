/**
 * Journal: every act as changes that can be taken back and, later, merged with another device's.
 *
 * Pure: a workbook and changes in, another workbook out. Clock, ids and storage come from outside.
 * Merging  Acts have one order for all devices (counter, then device); fields are set one by one, parts of
 *          lists are named by what they are and not by place, removals leave a tombstone, stock is an amount.
 */
export { type Act, type ActDraft, type ActHead, type ActKind, inJournalOrder, type Picture } from "./act.ts";
export { applyChanges } from "./apply.ts";
export {
  type Change,
  type ListName,
  listNames,
  type Match,
  type Path,
  type RecordOf,
  type StockField,
} from "./change.ts";
export { checkTouched } from "./check.ts";
export { difference } from "./difference.ts";
export { same } from "./fields.ts";
export { keyOf, rateKey } from "./keys.ts";
export { type Removed, removedSince } from "./removed.ts";
export { afterAct, type Entry, noStacks, type Stacks, stacksAfter, undoLimit } from "./stacks.ts";
export { stockOf } from "./stock.ts";
