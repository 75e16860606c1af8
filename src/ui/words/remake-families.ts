import type { Family } from "../../engine/supply/index.ts";

/** A supply of a family as one speaks of it at work: "a marker doing a brush's work". */
export const families: Readonly<Record<Family, string>> = {
  marker: "a marker",
  liner: "a liner",
  graphite: "a graphite pencil",
  "colour-pencil": "a colour pencil",
  paint: "paint",
  ink: "ink",
  pastel: "a pastel",
  brush: "a brush",
  eraser: "an eraser",
  paper: "paper",
  tool: "a tool",
  other: "something else",
};
