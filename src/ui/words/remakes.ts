import { spoken } from "./spoken.ts";

/** The words of Remakes, in the language in use. */
export const { remakeWords } = await spoken({
  en: () => import("./en/remakes.ts"),
  sv: () => import("./sv/remakes.ts"),
});
