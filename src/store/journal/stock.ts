import { fail, type Outcome, ok } from "../../engine/record/index.ts";
import type { ChangeOf, StockField } from "./change.ts";
import { blankOf, type Edited, emptied } from "./edit-part.ts";
import { isFields, own, withField } from "./fields.ts";
import { read } from "./path.ts";

/** The stock that a field left out stands for: one piece; of a pad, the sheets it was sold with (0: not known). */
export function stockLeftOut(record: unknown, field: StockField): number {
  if (field === "owned") return 1;
  const sheets = read(record, ["supply", "traits", "sheets"]);
  return typeof sheets === "number" ? sheets : 0;
}

/** The stock as it stands, a count from 0 up. */
export function stockOf(record: unknown, field: StockField): number {
  const count = read(record, [field]);
  return typeof count === "number" ? count : stockLeftOut(record, field);
}

/** Changes stock by an amount. There cannot be less than none. */
export function addStock(record: unknown, change: ChangeOf<"add">): Outcome<Edited> {
  const { field, by, blank, list, id } = change;
  const count = stockOf(record, field) + by;
  if (!isFields(record) || count < 0) {
    return fail(id, `there are only ${count - by} left`, "take out no more than there are");
  }
  const settled = blank && count === stockLeftOut(record, field) ? emptied(blank, count) : count;
  const inverse = { op: "add", list, id, field, by: -by, ...blankOf(own(record, field)) } as const;
  return ok<Edited>({ record: withField(record, field, settled), inverse });
}
