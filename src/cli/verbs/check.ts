import { noticesOf } from "../../engine/workbook/index.ts";
import { workbookFrom } from "../input.ts";
import type { Verb } from "../verb.ts";
import { visible } from "../visible.ts";

export const check: Verb = {
  usage: "FILE",
  operands: 1,
  options: {},
  hasJson: true,
  run: ({ operands, io }) => {
    const book = workbookFrom(io, operands[0]);
    const kits = book.kits ?? [];
    const counts = {
      stash: book.stash?.length ?? 0,
      kits: kits.length,
      lines: kits.reduce((sum, kit) => sum + (kit.lines?.length ?? 0), 0),
      remakes: book.remakes?.length ?? 0,
    };
    const notices = noticesOf(book, io.today);
    return {
      json: () => ({ ok: true, counts, notices }),
      text: () =>
        [
          `A sound workbook: ${counts.stash} stash items, ${counts.kits} kits with ${counts.lines} lines, ${counts.remakes} remakes.\n`,
          ...notices.map(({ place, notice }) => `${visible(`${place}: ${notice}`)}\n`),
        ].join(""),
    };
  },
};
