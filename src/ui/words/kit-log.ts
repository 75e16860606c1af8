import { spoken } from "./spoken.ts";

/** The words of what is opened while a kit is logged, in the language in use. */
export const { kitLogWords } = await spoken({
  en: () => import("./en/kit-log.ts"),
  sv: () => import("./sv/kit-log.ts"),
});
