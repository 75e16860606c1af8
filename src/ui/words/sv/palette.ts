import { paletteWords as en } from "../en/palette.ts";

export const paletteWords: typeof en = en;
