import { spoken } from "./spoken.ts";

/** The words of taking colours from a photo, in the language in use. */
export const { chartWords } = await spoken({
  en: () => import("./en/chart.ts"),
  sv: () => import("./sv/chart.ts"),
});
