import { spoken } from "./spoken.ts";

/** The words of Markets, in the language in use. */
export const { marketsWords } = await spoken({
  en: () => import("./en/markets.ts"),
  sv: () => import("./sv/markets.ts"),
});
