/**
 * The longest strictly rising run within `numbers` (not necessarily neighbours), as indexes into it.
 * @see Fredman (1975), "On computing the length of longest increasing subsequences", Discrete Mathematics 11
 */
export function longestRun(numbers: readonly number[]): readonly number[] {
  const ends: number[] = []; // ends[k]: index of the smallest number that a run of k + 1 can end with
  const before: (number | undefined)[] = [];
  const valueAt = (index: number | undefined) => numbers[index ?? -1] ?? Number.POSITIVE_INFINITY;
  for (const [index, number] of numbers.entries()) {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (valueAt(ends[middle]) < number) low = middle + 1;
      else high = middle;
    }
    before[index] = ends[low - 1];
    ends[low] = index;
  }
  const run: number[] = [];
  for (let at = ends.at(-1); at !== undefined; at = before[at]) run.push(at);
  return run.reverse();
}
