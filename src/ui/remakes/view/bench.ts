import { remakeWords } from "../../words/remakes.ts";
import type { Subject } from "./solve.ts";

const words = remakeWords.bench;

export const benchLead = ({ remake }: Subject): Readonly<{ lead: string; more: string }> => ({
  lead: words.lead(remake.log?.length ?? 0),
  more: words.leadMore(remake.essentials?.length ?? 0, remake.bends?.length ?? 0),
});

/** Notes for oneself, an optional field of the remake. */
export const notesOf = (remake: Subject["remake"]): string =>
  typeof remake.notes === "string" ? remake.notes : "";

/** What a basic is for; a word of the person's own stays one of the choices. */
export function roleOptions(
  own: string | null | undefined,
): readonly Readonly<{ value: string; label: string }>[] {
  const known = Object.entries(words.roles).map(([value, label]) => ({ value, label }));
  return !own || known.some(({ value }) => value === own) ? known : [...known, { value: own, label: own }];
}

export const ruleOptions = Object.entries(words.rules).map(([value, label]) => ({
  value,
  label: `${value}. ${label}`,
}));
