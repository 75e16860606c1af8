import { spoken } from "./spoken.ts";

/** The words of the palette picture, in the language in use. */
export const { paletteWords } = await spoken({
  en: () => import("./en/palette.ts"),
  sv: () => import("./sv/palette.ts"),
});
