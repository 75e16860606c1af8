import { fail, type Outcome, ok } from "../../engine/record/index.ts";
import { type Workbook, WorkbookSchema } from "../../engine/workbook/index.ts";
import { type Change, type ListName, listNames } from "./change.ts";
import { type Fields, own, withField } from "./fields.ts";
import { keyOf } from "./keys.ts";

/** The records of a list that changes touched; all of them when the list was set whole. */
function touchedRecords(book: Workbook, changes: readonly Change[], list: ListName): unknown {
  const records = book[list];
  const whole = changes.some(
    (change) => change.op === "set" && change.list === "book" && change.path[0] === list,
  );
  if (whole) return records;
  const ids = new Set(changes.filter((change) => change.list === list).map(({ id }) => id));
  return ids.size > 0 ? records?.filter((record) => ids.has(keyOf(list, record))) : undefined;
}

/** The book with only the records that were touched, all that a check needs to look at. */
const touchedPart = (book: Workbook, changes: readonly Change[]): Fields =>
  listNames.reduce<Fields>((part, list) => withField(part, list, touchedRecords(book, changes, list)), book);

/** A place as the reader of files writes it, after the record's id: `kit-1: lines[2].want`. */
function placeOf([list, index, ...path]: readonly PropertyKey[], part: Fields): string {
  const name = listNames.find((candidate) => candidate === list);
  const records = name && own(part, name);
  const steps = path.map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`)).join("");
  if (!name || !Array.isArray(records) || typeof index !== "number") return String(list);
  const record = keyOf(name, records[index]);
  return steps ? `${record}: ${steps.replace(/^\./, "")}` : record;
}

/**
 * Whether what `changes` touched in `book` is as the format wants it, so that nothing gets in which a restore
 * would refuse later.
 * @returns the first fault, at its record and field
 */
export function checkTouched(book: Workbook, changes: readonly Change[]): Outcome<null> {
  const part = touchedPart(book, changes);
  const parsed = WorkbookSchema.safeParse(part);
  if (parsed.success) return ok(null);
  const [issue] = parsed.error.issues;
  // A message of the schemas reads "what is wrong; what would be right".
  const [problem = "", remedy = "mend it, and try again"] = (issue?.message ?? "").split("; ");
  return fail(placeOf(issue?.path ?? [], part), problem, remedy);
}
