import { spoken } from "./spoken.ts";

/** The words of what is the same as what, in the language in use. */
export const { kinWords } = await spoken({
  en: () => import("./en/kin.ts"),
  sv: () => import("./sv/kin.ts"),
});
