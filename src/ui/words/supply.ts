import { spoken } from "./spoken.ts";

/** The words of a supply's form, in the language in use. */
export const { supplyWords } = await spoken({
  en: () => import("./en/supply.ts"),
  sv: () => import("./sv/supply.ts"),
});
