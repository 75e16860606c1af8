import { foldText } from "../../engine/supply/index.ts";

/** A text for looking things up: case and accents folded away, its words kept apart by single spaces. */
export const foldWords = (text: string): string =>
  text
    .split(/\s+/)
    .map(foldText)
    .filter((word) => word !== "")
    .join(" ");
