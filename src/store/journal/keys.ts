import type { RateTable } from "../../engine/money/index.ts";
import type { ListName, Match } from "./change.ts";
import { type Fields, isFields, own } from "./fields.ts";

/** The fields that tell the records of a list apart: an id, but rates have none. */
export const keyFields = (list: ListName): readonly string[] =>
  list === "rates" ? ["base", "date"] : ["id"];

const plain = (value: unknown): string | number | boolean | null =>
  typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? value : null;

const fieldsOf = (record: unknown): Fields => (isFields(record) ? record : {});

/** The match that names `record` by these fields. */
export const matchBy = (fields: readonly string[], record: unknown): Match =>
  Object.fromEntries(fields.map((field) => [field, plain(own(fieldsOf(record), field))]));

/** A record's key by these fields: one text field as it stands, anything else as JSON. */
export function keyBy(fields: readonly string[], record: unknown): string {
  const [field] = fields;
  if (fields.length === 1 && field !== undefined) {
    // Nearly always an id, and asked of thousands. A list has no such field of its own.
    const value = typeof record === "object" && record !== null ? own(record as Fields, field) : undefined;
    if (typeof value === "string") return value;
  }
  return JSON.stringify(fields.map((name) => plain(own(fieldsOf(record), name))));
}

/** The `id` by which a change names a record of a list. */
export const keyOf = (list: ListName, record: unknown): string => keyBy(keyFields(list), record);

/** The `id` of a rate table, which has no id of its own. */
export const rateKey = ({ base, date }: Pick<RateTable, "base" | "date">): string =>
  keyOf("rates", { base, date });
