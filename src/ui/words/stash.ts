import { spoken } from "./spoken.ts";

/** The words of the Stash, in the language in use. */
export const { stashWords } = await spoken({
  en: () => import("./en/stash.ts"),
  sv: () => import("./sv/stash.ts"),
});
