import { spoken } from "./spoken.ts";

/** The words of changing several things of the Stash at once, in the language in use. */
export const { bulkWords } = await spoken({
  en: () => import("./en/bulk.ts"),
  sv: () => import("./sv/bulk.ts"),
});
