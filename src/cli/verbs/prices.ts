import { type PrintedEstimate, pricesOf } from "../../engine/price/index.ts";
import { byId, homeMarket, orFaults, workbookFrom } from "../input.ts";
import { table } from "../table.ts";
import { textOption, type Verb } from "../verb.ts";
import { visible } from "../visible.ts";

const figure = (estimate: PrintedEstimate | null): string => {
  if (!estimate) return "no price";
  const { likely, low, high } = estimate;
  const range = low.amount === high.amount ? "" : ` (${low.amount} to ${high.amount})`;
  return `${likely.amount}${range}`;
};

export const prices: Verb = {
  usage: "FILE --kit ID [--market ID]",
  operands: 1,
  options: { kit: { type: "string" }, market: { type: "string" } },
  hasJson: true,
  run: ({ operands, options, io }) => {
    const book = workbookFrom(io, operands[0]);
    const kit = byId(book.kits, textOption(options, "kit"), "kit");
    const market = homeMarket(book, textOption(options, "market"));
    const found = orFaults(pricesOf(book, kit, market.id));
    const names = new Map((kit.lines ?? []).map(({ id, supply }) => [id, supply.name]));
    const rows = found.lines.map(({ line, qty, list, street }) => [
      line,
      String(qty),
      names.get(line) ?? "",
      figure(list),
      figure(street),
    ]);
    const sentences = found.lines.flatMap(({ line, list, street }) => [
      ...(list ? [`${visible(`${line} list: ${list.sentence}`)}\n`] : []),
      ...(street ? [`${visible(`${line} shop: ${street.sentence}`)}\n`] : []),
    ]);
    return {
      json: () => found,
      text: () =>
        [
          `${visible(market.name)}, ${market.currency}, each\n`,
          table(["line", "qty", "item", "list", "shop"], rows, [1, 3, 4]),
          "\n",
          ...sentences,
        ].join(""),
    };
  },
};
