import type { InEvery } from "../../engine/record/index.ts";
import { language } from "../../store/index.ts";

/**
 * The words of the language that this page is read in. Only they are loaded: a page waits for its words before its
 * first line is drawn. So that none waits for itself, the files of a language import nothing but each other and types.
 */
export const spoken = <T>(words: InEvery<() => Promise<T>>): Promise<T> => words[language]();
