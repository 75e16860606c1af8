import { spoken } from "./spoken.ts";

/** The words of Keep safe, in the language in use. */
export const { keepSafeWords } = await spoken({
  en: () => import("./en/keep-safe.ts"),
  sv: () => import("./sv/keep-safe.ts"),
});
