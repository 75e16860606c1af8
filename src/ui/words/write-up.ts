import { spoken } from "./spoken.ts";

/** The words of the choice of a text's language, in the language in use. */
export const { writeUpWords } = await spoken({
  en: () => import("./en/write-up.ts"),
  sv: () => import("./sv/write-up.ts"),
});
