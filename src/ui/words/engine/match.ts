import * as engine from "../../../engine/match/index.ts";
import type { Family, StashItem, Supply } from "../../../engine/supply/index.ts";
import { language } from "../../../store/index.ts";

export const familyLabel = (family: Family): string => engine.familyLabel(family, language);

export const traitLabel = (trait: string): string => engine.traitLabel(trait, language);

export const verdictWords = (nearness: engine.Nearness): string => engine.verdictWords(nearness, language);

export const cutSentence = (cut: engine.Cut): string => engine.cutSentence(cut, language);

export const reasonLine = (kit: Supply, item: StashItem, candidate: engine.Reasoned): string =>
  engine.reasonLine(kit, item, candidate, language);
