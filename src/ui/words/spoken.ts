import type { InEvery } from "../../engine/record/index.ts";
import { language } from "../../store/index.ts";

/** Of a text in every language, the one that this page is read in. */
export const spoken = <T>(texts: InEvery<T>): T => texts[language];
