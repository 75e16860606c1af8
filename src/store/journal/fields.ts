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
export const tidy = (value: unknown): unknown => (isTidy(value) ? value : tidied(value));

/** Whether nothing in it is undefined: so it is with nearly every value, and thousands are asked. */
function isTidy(value: unknown): boolean {
  if (Array.isArray(value)) return value.every(isTidy);
  return isFields(value) ? Object.values(value).every((field) => field !== undefined && isTidy(field)) : true;
}

function tidied(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(tidy);
  if (!isFields(value)) return value;
  const entries = Object.entries(value).filter(([, field]) => field !== undefined);
  return Object.fromEntries(entries.map(([name, field]) => [name, tidy(field)]));
}
