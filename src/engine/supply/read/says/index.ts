import type { InEvery } from "../../../record/index.ts";
import { inEnglish } from "./en.ts";
import type { Says } from "./says.ts";
import { inSwedish } from "./sv.ts";

/** How each language says what was read. */
export const says: InEvery<Says> = { en: inEnglish, sv: inSwedish };

export type { Says, Word } from "./says.ts";
