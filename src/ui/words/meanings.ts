import { spoken } from "./spoken.ts";

/** What our own words mean, and the words of the page that lists them, in the language in use. */
export const { meanings, meaningsPage } = await spoken({
  en: () => import("./en/meanings.ts"),
  sv: () => import("./sv/meanings.ts"),
});
