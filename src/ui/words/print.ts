import { spoken } from "./spoken.ts";

/** The words of what is printed of the stash, in the language in use. */
export const { printWords } = await spoken({
  en: () => import("./en/print.ts"),
  sv: () => import("./sv/print.ts"),
});
