/** Something a person can put right: where it is, what is wrong, and what would be right. */
export type Fault = Readonly<{ place: string; problem: string; remedy: string }>;

/** Something odd that is accepted all the same. */
export type Notice = Readonly<{ place: string; notice: string }>;

/** A value, or the fault that stands in its way. Exceptions are left for bugs. */
export type Outcome<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; fault: Fault }>;

export const ok = <T>(value: T): Outcome<T> => ({ ok: true, value });

export const fail = (place: string, problem: string, remedy: string): { ok: false; fault: Fault } => ({
  ok: false,
  fault: { place, problem, remedy },
});
