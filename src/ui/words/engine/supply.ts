import * as engine from "../../../engine/supply/index.ts";
import { language } from "../../../store/index.ts";

export const factsOf = (supply: engine.Supply, format: (value: number) => string): readonly string[] =>
  engine.factsOf(supply, format, language);

export const valueWord = (family: engine.Family, trait: string, value: string): string =>
  engine.valueWord(family, trait, value, language);
