import * as colour from "../../engine/colour/index.ts";
import * as match from "../../engine/match/index.ts";
import * as price from "../../engine/price/index.ts";
import * as supply from "../../engine/supply/index.ts";
import * as worth from "../../engine/worth/index.ts";
import { language } from "../../store/index.ts";

// What the engine says, in the language of this page: screens take these from here, and cannot forget it.

export const plainName = (lab: colour.Lab): string => colour.plainName(lab, language);

export const missWords = (kit: colour.Lab, standIn: colour.Lab): readonly string[] =>
  colour.missWords(kit, standIn, language);

export const factsOf = (of: supply.Supply, format: (value: number) => string): readonly string[] =>
  supply.factsOf(of, format, language);

export const valueWord = (family: supply.Family, trait: string, value: string): string =>
  supply.valueWord(family, trait, value, language);

export const familyLabel = (family: supply.Family): string => match.familyLabel(family, language);

export const traitLabel = (trait: string): string => match.traitLabel(trait, language);

export const verdictWords = (nearness: match.Nearness): string => match.verdictWords(nearness, language);

export const cutSentence = (cut: match.Cut): string => match.cutSentence(cut, language);

export const reasonLine = (kit: supply.Supply, item: supply.StashItem, candidate: match.Reasoned): string =>
  match.reasonLine(kit, item, candidate, language);

export const estimateLine = (
  book: price.PriceBook,
  kit: price.PricedKit,
  line: price.Line,
  marketId: string,
): price.LineEstimate => price.estimateLine(book, kit, line, marketId, language);

export const valueKit = (
  book: worth.WorthBook,
  kit: worth.Kit,
  marketIds: readonly string[],
): ReturnType<typeof worth.valueKit> => worth.valueKit(book, kit, marketIds, language);
