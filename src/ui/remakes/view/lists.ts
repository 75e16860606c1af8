/** The list with one entry changed. */
export const changedAt = <T extends object>(
  list: readonly T[],
  index: number,
  patch: Partial<T>,
): readonly T[] => list.map((entry, at) => (at === index ? { ...entry, ...patch } : entry));

export const withoutAt = <T>(list: readonly T[], index: number): readonly T[] =>
  list.filter((_, at) => at !== index);

/** Entries with keys that stay apart where two read the same. They have no ids: the place tells them apart. */
export const keyed = <T>(
  list: readonly T[] | null | undefined,
): readonly Readonly<{ key: string; index: number; entry: T }>[] =>
  (list ?? []).map((entry, index) => ({ key: String(index), index, entry }));
