import * as engine from "../../../engine/price/index.ts";
import { language } from "../../../store/index.ts";

export const estimateLine = (
  book: engine.PriceBook,
  kit: engine.PricedKit,
  line: engine.Line,
  marketId: string,
): engine.LineEstimate => engine.estimateLine(book, kit, line, marketId, language);
