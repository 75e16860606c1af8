import { readColourPhrase } from "../../../engine/supply/index.ts";
import type { ReadPhrase } from "./asked.ts";

/** Reads what words say of a colour; a file of its own, since the colour words are many and not always wanted. */
export const readPhrase: ReadPhrase = readColourPhrase;
