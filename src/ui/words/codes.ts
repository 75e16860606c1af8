import { spoken } from "./spoken.ts";

/** The words of finding by bar code, in the language in use. */
export const { codeWords } = await spoken({
  en: () => import("./en/codes.ts"),
  sv: () => import("./sv/codes.ts"),
});
