import { spoken } from "./spoken.ts";

/** The words of keeping the Stash right, in the language in use. */
export const { tidyWords } = await spoken({
  en: () => import("./en/tidy.ts"),
  sv: () => import("./sv/tidy.ts"),
});
