import * as engine from "../../../engine/worth/index.ts";
import { language } from "../../../store/index.ts";

export const valueKit = (
  book: engine.WorthBook,
  kit: engine.Kit,
  marketIds: readonly string[],
): ReturnType<typeof engine.valueKit> => engine.valueKit(book, kit, marketIds, language);
