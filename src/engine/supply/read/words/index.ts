import type { InEvery } from "../../../record/index.ts";
import { english } from "./en.ts";
import { swedish } from "./sv.ts";
import type { Wording } from "./wording.ts";

/** The words that lines are written in. */
export const wordings: InEvery<Wording> = { en: english, sv: swedish };

export { listed, type Wording } from "./wording.ts";
