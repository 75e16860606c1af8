import { listed } from "./say.ts";

/** The words of the palette as a picture, in English. */

export const paletteWords = {
  title: "The palette",

  finding: {
    none: "None of its colours has one beside it yet.",
    met: "Every colour is exactly met.",
    lookTheSame: (most: string) =>
      `No colour is more than ${most} apart: even side by side they look the same.`,
    only: (colour: string, line: number, apart: string, how: readonly string[]) =>
      how.length === 0
        ? `The ${colour} of line ${line} is as good as met.`
        : `The ${colour} of line ${line} is ${apart} apart, ${listed(how)}.`,
    drifts: (mean: string, colour: string, line: number, how: readonly string[]) =>
      `${mean} apart on average; the ${colour} of line ${line} drifts most${how.length === 0 ? "" : `, ${listed(how)}`}.`,
    alone: (lines: readonly number[]) =>
      lines.length === 1
        ? `Line ${lines[0]} has no colour beside it.`
        : `Lines ${listed(lines.map(String))} have no colour beside them.`,
  },

  disc: "Hue and strength",
  ladder: "Lightness",
  discText: (finding: string) => `Hue as direction, strength as distance from the middle. ${finding}`,
  ladderText: "Each line on its lightness, from black at 0 to white at 100.",
  hues: {
    red: "red",
    orange: "orange",
    yellow: "yellow",
    green: "green",
    teal: "teal",
    blue: "blue",
    violet: "violet",
    pink: "pink",
  },
  white: "white",
  black: "black",
  kit: "in the kit",
  mine: "from my shelves",
  alone: "nothing beside it",
  caption:
    "Greys lie in the middle, stronger colours further out. The longer the line between two marks, the further apart they are; it is to the same scale in both pictures.",

  table: {
    open: "the same as a table",
    caption: "The kit’s colours and what stands beside them",
    line: "Line",
    kit: "In the kit",
    mine: "From my shelves",
    apart: "Apart",
    how: "How it misses",
    lab: (l: string, a: string, b: string) => `lightness ${l}, a ${a}, b ${b}`,
    same: "not at all",
    slight: "too little to say",
    gap: "nothing close",
    leftOut: "left out on purpose",
    unknown: "its colour is not noted",
    about:
      "Lightness goes from 0, black, to 100, white; a runs from green to red, b from blue to yellow (CIELAB under daylight, D65). Apart is the CIEDE2000 difference; under 2 shows only side by side. It weighs the three by how the eye sees them, so a long line between strong colours can count less than a short one between greys.",
  },
};
