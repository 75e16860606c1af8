import { spoken } from "./spoken.ts";

/** The names of acts in the search field, in the language in use. */
export const { actWords } = await spoken({
  en: () => import("./en/acts.ts"),
  sv: () => import("./sv/acts.ts"),
});
