import { spoken } from "./spoken.ts";

/** The words of bringing in a list, in the language in use. */
export const { importWords } = await spoken({
  en: () => import("./en/import.ts"),
  sv: () => import("./sv/import.ts"),
});
