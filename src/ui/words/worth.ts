import { spoken } from "./spoken.ts";

/** The words of Worth, in the language in use. */
export const { worthWords } = await spoken({
  en: () => import("./en/worth.ts"),
  sv: () => import("./sv/worth.ts"),
});
