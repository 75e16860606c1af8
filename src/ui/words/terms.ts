import type { terms as en } from "./en/terms.ts";
import { spoken } from "./spoken.ts";

/** One of our own words that can be asked what it means. */
export type Term = keyof typeof en;

type Forms = Readonly<Record<Term, readonly [string, ...string[]]>>;

const { terms: said } = await spoken({
  en: () => import("./en/terms.ts"),
  sv: () => import("./sv/terms.ts"),
});

/** Our own words in the language in use: the head word, then its other forms. */
export const terms: Forms = said;
