import { spoken } from "./spoken.ts";

/** The words of adding a whole set of colours, in the language in use. */
export const { setWords } = await spoken({
  en: () => import("./en/set.ts"),
  sv: () => import("./sv/set.ts"),
});
