import type { Supply } from "../../engine/supply/index.ts";
import type { Kit } from "../../engine/worth/index.ts";
import type { Path } from "../journal/index.ts";
import { storeWords } from "../words/index.ts";

/** The field that a path leads to: the last of its steps that is no match of a list's element. */
export const fieldOf = (path: Path): string => path.findLast((step) => typeof step === "string") ?? "";

export const supplyName = ({ supply }: Readonly<{ supply: Supply }>): string =>
  supply.name || storeWords.unnamed;

export const kitName = ({ title, maker, period }: Kit): string => title || `${maker} ${period}`;

/** The name of an act that changes one field of something. */
export const change = (path: Path, of: string): string => storeWords.change(fieldOf(path), of);
