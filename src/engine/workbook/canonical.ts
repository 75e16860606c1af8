/**
 * JSON by which two records can be compared: keys in code-unit order, and fields that are null left out,
 * since the format takes both to mean the same. List order stays.
 */
export const canonicalJson = (value: unknown): string => JSON.stringify(settle(value));

function settle(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(settle);
  if (typeof value !== "object" || value === null) return value;
  const kept = Object.entries(value).filter(([, field]) => field !== null && field !== undefined);
  // fromEntries defines own properties, so a key such as "__proto__" stays data.
  return Object.fromEntries(
    kept.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, field]) => [key, settle(field)]),
  );
}
