/** All from one to another, whichever comes first, both with them. Only the last where the first is not there. */
export function between(ids: readonly string[], from: string, to: string): readonly string[] {
  const [a, b] = [ids.indexOf(from), ids.indexOf(to)];
  if (b === -1) return [];
  return a === -1 ? [to] : ids.slice(Math.min(a, b), Math.max(a, b) + 1);
}
