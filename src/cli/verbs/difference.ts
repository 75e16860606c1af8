import { deltaE2000, differenceWord, type Lab, parseColour } from "../../engine/colour/index.ts";
import { Misuse } from "../io.ts";
import type { Verb } from "../verb.ts";

function colour(text: string | undefined): Lab {
  const outcome = parseColour(text ?? "");
  if (!outcome.ok) throw new Misuse(`${outcome.fault.problem}; ${outcome.fault.remedy}`);
  return outcome.value;
}

export const differenceVerb: Verb = {
  usage: "COLOUR COLOUR   (hex, or lab(L a b))",
  operands: 2,
  options: {},
  hasJson: true,
  run: ({ operands }) => {
    // The word goes by the figure that is printed, so that the two never contradict each other.
    const deltaE00 = Number(deltaE2000(colour(operands[0]), colour(operands[1])).toFixed(4));
    const word = differenceWord(deltaE00);
    return { json: () => ({ deltaE00, word }), text: () => `${deltaE00.toFixed(4)} apart: ${word}\n` };
  },
};
