import { spoken } from "./spoken.ts";

/** The words of finding and choosing in the Stash, in the language in use. */
export const { findWords } = await spoken({
  en: () => import("./en/find.ts"),
  sv: () => import("./sv/find.ts"),
});
