import { coverage } from "../../engine/match/index.ts";
import { workbookFrom } from "../input.ts";
import { table } from "../table.ts";
import type { Verb } from "../verb.ts";

export const coverageVerb: Verb = {
  usage: "FILE",
  operands: 1,
  options: {},
  hasJson: true,
  run: ({ operands, io }) => {
    const book = workbookFrom(io, operands[0]);
    const kits = coverage({
      kits: book.kits ?? [],
      stash: book.stash ?? [],
      kinships: book.kinships,
      weights: book.weights,
    });
    const rows = kits.map(({ kit, gaps, meanLikeness, worst }) => [
      kit,
      String(gaps),
      String(Math.round(meanLikeness * 100)),
      worst ? `${worst.line} (${Math.round(worst.likeness * 100)})` : "",
    ]);
    return {
      json: () => ({ kits }),
      text: () => table(["kit", "gaps", "of 100", "weakest line"], rows, [1, 2]),
    };
  },
};
