import type { Fault } from "../record/index.ts";

/** An outcome that lists every fault; `fault` is the first of them, so that it serves as an `Outcome` too. */
export type Checked<T> =
  | Readonly<{ ok: true; value: T }>
  | Readonly<{ ok: false; fault: Fault; faults: readonly Fault[] }>;

/** Refuses for every reason at once. */
export const refuse = (faults: readonly [Fault, ...Fault[]]): Checked<never> => ({
  ok: false,
  fault: faults[0],
  faults,
});
