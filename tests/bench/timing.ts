/** Milliseconds that some work took. */
export async function timed(work: () => unknown): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** What was measured: ours and the peer's milliseconds, run by run. */
export type Pair = Readonly<{ ours: readonly number[]; peer: readonly number[] }>;

/**
 * Two things by turns, so that what slows the machine slows both, each without the other's rubbish to clear away. The first
 * turn warms up and does not count.
 */
export async function byTurns(
  runs: number,
  ours: (run: number) => Promise<number>,
  peer: (run: number) => Promise<number>,
): Promise<Pair> {
  const clear = globalThis.gc;
  if (!clear) throw new Error("the browser needs --js-flags=--expose-gc");
  const pair = { ours: [] as number[], peer: [] as number[] };
  for (let run = 0; run <= runs; run += 1) {
    clear();
    const theirs = await peer(run);
    clear();
    const own = await ours(run);
    if (run === 0) continue;
    pair.peer.push(theirs);
    pair.ours.push(own);
  }
  return pair;
}
