import { paletteWords as en } from "./en/palette.ts";
import { spoken } from "./spoken.ts";
import { paletteWords as sv } from "./sv/palette.ts";

/** The words of the palette picture, in the language in use. */
export const paletteWords = spoken<typeof en>({ en, sv });
