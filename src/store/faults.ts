import type { Fault, Outcome } from "../engine/record/index.ts";

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

const onScreen = "Everything saved before it is still kept, and the change itself is still on screen.";

const texts: Readonly<Record<Exclude<StoreFaultKind, "refused">, Omit<StoreFault, "kind">>> = {
  quota: {
    place: "this device",
    problem: "There is no room left to keep this change.",
    safe: onScreen,
    remedy: "Save a copy now, or free some space and try again.",
  },
  interrupted: {
    place: "this browser",
    problem: "The browser broke off before the change was kept.",
    safe: onScreen,
    remedy: "Save a copy now, or try again.",
  },
  closed: {
    place: "this browser",
    problem: "The browser has closed the place where changes are kept.",
    safe: onScreen,
    remedy: "Save a copy now, then reload this tab and try again.",
  },
  newer: {
    place: "this tab",
    problem: "A newer version of the app has been used here, so this tab only reads.",
    safe: "Nothing was changed.",
    remedy: "Reload this tab to get the newer version, or save a copy now.",
  },
  stale: {
    place: "this tab",
    problem: "Something was changed in another tab first.",
    safe: "Both tabs now show the same, and nothing was lost.",
    remedy: "Look at what is there now, and try again.",
  },
  damaged: {
    place: "this browser",
    problem: "What is kept here cannot be read.",
    safe: "It has not been touched.",
    remedy: "Restore a backup, or try again.",
  },
  unavailable: {
    place: "this browser",
    problem: "This browser keeps nothing here: a private window, or storage is switched off.",
    safe: "You can work, but only until this tab is closed.",
    remedy: "Save a copy before you close it, or open the app in an ordinary window.",
  },
};

export const storeFault = (kind: keyof typeof texts): StoreFault => ({ kind, ...texts[kind] });

/** A change that cannot be made, as the engine found it. */
export const refusal = (fault: Fault): StoreFault => ({
  ...fault,
  kind: "refused",
  safe: "Nothing was changed.",
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

const kinds: ReadonlyMap<string, keyof typeof texts> = new Map([
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
