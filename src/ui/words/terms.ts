import { terms as en } from "./en/terms.ts";
import { spoken } from "./spoken.ts";
import { terms as sv } from "./sv/terms.ts";

/** One of our own words that can be asked what it means. */
export type Term = keyof typeof en;

type Forms = Readonly<Record<Term, readonly [string, ...string[]]>>;

/** Our own words in the language in use: the head word, then its other forms. */
export const terms = spoken<Forms>({ en, sv });
