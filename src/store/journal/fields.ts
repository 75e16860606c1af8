/** A record whose fields are not known yet. */
export type Fields = Readonly<Record<string, unknown>>;

export const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A field of the record itself; never one it inherits, whatever the name. */
export const own = (fields: Fields, name: string): unknown =>
  Object.hasOwn(fields, name) ? fields[name] : undefined;

/** The record with the field set, or left out where `value` is undefined. */
export const withField = (fields: Fields, name: string, value: unknown): Fields =>
  value === undefined
    ? Object.fromEntries(Object.entries(fields).filter(([key]) => key !== name))
    : { ...fields, [name]: value };

/** Whether two plain values hold the same, whatever the order of their fields. */
export function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((value, index) => same(value, b[index]));
  }
  if (!isFields(a) || !isFields(b)) return false;
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => Object.hasOwn(b, name) && same(a[name], b[name]))
  );
}

/** The value as JSON would keep it: fields that are undefined left out. Unchanged where there are none. */
export function tidy(value: unknown): unknown {
  if (Array.isArray(value)) {
    const items = value.map(tidy);
    return items.every((item, index) => item === value[index]) ? value : items;
  }
  if (!isFields(value)) return value;
  const entries = Object.entries(value).map(([name, field]) => [name, tidy(field)] as const);
  return entries.every(([name, field]) => field !== undefined && field === value[name])
    ? value
    : Object.fromEntries(entries.filter(([, field]) => field !== undefined));
}
