import type { Fault, Outcome } from "../record/index.ts";

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

/** Each fault once, in order. */
export const onceEach = (faults: readonly Fault[]): readonly Fault[] =>
  faults.filter(
    (fault, at) =>
      faults.findIndex((other) => other.place === fault.place && other.problem === fault.problem) === at,
  );

/** Every fault of what was refused, or of an outcome. */
export function faultsOf(outcome: Outcome<unknown> | Checked<unknown>): readonly Fault[] {
  if (outcome.ok) return [];
  return "faults" in outcome ? outcome.faults : [outcome.fault];
}

/** Every value, or every fault. */
export function allOf<T>(outcomes: readonly (Outcome<T> | Checked<T>)[]): Checked<readonly T[]> {
  const [first, ...rest] = onceEach(outcomes.flatMap(faultsOf));
  if (first) return refuse([first, ...rest]);
  return { ok: true, value: outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])) };
}
