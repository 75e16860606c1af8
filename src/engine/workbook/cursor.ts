/**
 * A way to walk a document that may be wrong anywhere: what is not there, or not of the expected kind, is
 * passed over in silence, since the schemas say so already.
 */
export type Cursor = Readonly<{ value: unknown; place: string }>;

/** The field of a record, or a cursor at nothing. */
export function at(cursor: Cursor, key: string): Cursor {
  const { value } = cursor;
  const inner =
    typeof value === "object" && value !== null && Object.hasOwn(value, key)
      ? Reflect.get(value, key)
      : undefined;
  return { value: inner, place: cursor.place === "" ? key : `${cursor.place}.${key}` };
}

/** The elements of a list field. */
export function each(cursor: Cursor, key: string): readonly Cursor[] {
  const list = at(cursor, key);
  if (!Array.isArray(list.value)) return [];
  return list.value.map((value: unknown, i) => ({ value, place: `${list.place}[${i}]` }));
}

/** The keys of a record field, each with its place. */
export function keysOf(cursor: Cursor, key: string): readonly Cursor[] {
  const record = at(cursor, key);
  if (typeof record.value !== "object" || record.value === null || Array.isArray(record.value)) return [];
  return Object.keys(record.value).map((name) => ({ value: name, place: `${record.place}.${name}` }));
}

/** The text at a cursor, or null. */
export const textAt = (cursor: Cursor): string | null =>
  typeof cursor.value === "string" ? cursor.value : null;
