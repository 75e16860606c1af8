import type { ActHead } from "../../../store/index.ts";

/**
 * What was done, each act once as it stands now: the journal has one entry for doing it, and one for each time it was
 * taken back or done again, of which the newest tells.
 * @param acts newest first
 */
export function onceEach(acts: readonly ActHead[]): readonly ActHead[] {
  const told = new Set<string>();
  return acts.filter(({ id, of = id }) => {
    if (told.has(of)) return false;
    told.add(of);
    return true;
  });
}
