let sent: ReadonlySet<string> = new Set();

/**
 * Hands things that were chosen in the stash on to be printed or saved; the address says `of=chosen`, since thousands
 * of ids have no room in it. They are told for as long as the page lives.
 */
export function sendOn(ids: ReadonlySet<string>): void {
  sent = new Set(ids);
}

/** What was handed on last. */
export const sentOn = (): ReadonlySet<string> => sent;
