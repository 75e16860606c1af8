import { spoken } from "./spoken.ts";

/** The words of photos, in the language in use. */
export const { photoWords } = await spoken({
  en: () => import("./en/photos.ts"),
  sv: () => import("./sv/photos.ts"),
});
