import { spoken } from "./spoken.ts";

/** The words of the Desk, in the language in use. */
export const { deskWords } = await spoken({
  en: () => import("./en/desk.ts"),
  sv: () => import("./sv/desk.ts"),
});
