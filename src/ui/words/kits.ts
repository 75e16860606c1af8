import { spoken } from "./spoken.ts";

/** The words of Kits, in the language in use. */
export const { kitsWords } = await spoken({
  en: () => import("./en/kits.ts"),
  sv: () => import("./sv/kits.ts"),
});
