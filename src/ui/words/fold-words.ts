import { foldText } from "../../engine/supply/index.ts";

/** ASCII that has nothing to fold but capitals: a whole text at once, where words would each be taken apart. */
const plain = /^[ -~]*$/;

/** A text for looking things up: case and accents folded away, its words kept apart by single spaces. */
export const foldWords = (text: string): string =>
  plain.test(text)
    ? text.toLowerCase().trim().replaceAll(/ {2,}/g, " ")
    : text
        .split(/\s+/)
        .map(foldText)
        .filter((word) => word !== "")
        .join(" ");
