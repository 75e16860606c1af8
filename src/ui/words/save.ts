import { spoken } from "./spoken.ts";

/** The words of saving the stash as a list, in the language in use. */
export const { saveWords } = await spoken({
  en: () => import("./en/save.ts"),
  sv: () => import("./sv/save.ts"),
});
