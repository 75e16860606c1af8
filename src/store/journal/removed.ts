import type { Act } from "./act.ts";
import type { ListName } from "./change.ts";

/** A record that was removed, as it was then. */
export type Removed = Readonly<{ list: ListName; id: string; record: unknown; at: string; act: string }>;

/**
 * The tombstones in `acts` since a date, newest first, of records that `stands` says are still gone.
 * @param acts the journal or its newest part, in any order of time
 * @param since ISO 8601; deleted things can be brought back for 30 days
 */
export function removedSince(
  acts: readonly Act[],
  since: string,
  stands: (list: ListName, id: string) => boolean,
): readonly Removed[] {
  const seen = new Set<string>();
  return acts
    .filter(({ at }) => at >= since)
    .toSorted((a, b) => (a.at < b.at ? 1 : Number(a.at === b.at) - 1))
    .flatMap(tombstones)
    .filter(({ list, id }) => {
      const key = `${list}/${id}`;
      return !stands(list, id) && !seen.has(key) && seen.add(key);
    });
}

/** What one act removed: its inverse puts it back. */
function tombstones({ changes, inverse, at, id: act }: Act): readonly Removed[] {
  const removals = new Set(
    changes.filter(({ op }) => op === "remove").map((change) => `${change.list}/${change.id}`),
  );
  return inverse.flatMap((change) =>
    change.op === "put" && !change.path && removals.has(`${change.list}/${change.id}`)
      ? [{ list: change.list, id: change.id, record: change.record, at, act }]
      : [],
  );
}
