import type { Fault, Outcome } from "../engine/record/index.ts";
import { storeWords } from "./words/index.ts";

/**
 * Why something could not be kept or read.
 * - quota, interrupted, closed: the browser's doing; the same again may well work
 * - newer: a newer version of the app has written here, so this one only reads
 * - stale: another tab acted first; what is shown is brought up to date
 * - refused: the change itself is at fault; nothing waits to be tried again
 * - damaged: what is kept cannot be understood
 * - unavailable: the browser keeps nothing here
 */
export type StoreFaultKind =
  | "quota"
  | "interrupted"
  | "closed"
  | "newer"
  | "stale"
  | "refused"
  | "damaged"
  | "unavailable";

/** A fault of keeping, with what is safe all the same. `remedy` names the ways out. */
export type StoreFault = Fault & Readonly<{ kind: StoreFaultKind; safe: string }>;

/** A value from the store, or why there is none. */
export type Stored<T> = Readonly<{ ok: true; value: T }> | Readonly<{ ok: false; fault: StoreFault }>;

export const stored = <T>(value: T): Stored<T> => ({ ok: true, value });

export const failed = (fault: StoreFault): { ok: false; fault: StoreFault } => ({ ok: false, fault });

/** Where each has its cause. */
const places: Readonly<Record<Exclude<StoreFaultKind, "refused">, string>> = {
  quota: "this device",
  interrupted: "this browser",
  closed: "this browser",
  newer: "this tab",
  stale: "this tab",
  damaged: "this browser",
  unavailable: "this browser",
};

export const storeFault = (kind: keyof typeof places): StoreFault => ({
  kind,
  place: places[kind],
  ...storeWords.faults[kind],
});

/** A change that cannot be made, as the engine found it. */
export const refusal = (fault: Fault): StoreFault => ({
  ...fault,
  kind: "refused",
  safe: storeWords.nothingChanged,
});

/** An outcome of the engine, as one of the store. */
export const fromOutcome = <T>(outcome: Outcome<T>): Stored<T> =>
  outcome.ok ? outcome : failed(refusal(outcome.fault));

const nameOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "name" in error ? String(error.name) : "";

/** The names of an error and of those it came from: a full disk arrives as an abort with the reason inside. */
function namesOf(error: unknown): readonly string[] {
  const inner = typeof error === "object" && error !== null && "inner" in error ? error.inner : null;
  return inner && inner !== error ? [nameOf(error), ...namesOf(inner)] : [nameOf(error)];
}

const kinds: ReadonlyMap<string, keyof typeof places> = new Map([
  ["QuotaExceededError", "quota"],
  ["DatabaseClosedError", "closed"],
  ["InvalidStateError", "closed"],
  ["MissingAPIError", "unavailable"],
  ["SecurityError", "unavailable"],
]);

/** What a storage error means to the person. An error nobody foresaw counts as broken off. */
export function faultOf(error: unknown): StoreFault {
  const names = namesOf(error);
  const known = [...kinds].find(([name]) => names.includes(name));
  return storeFault(known?.[1] ?? "interrupted");
}
