import * as z from "zod/mini";
import { ColourSchema } from "../colour/index.ts";
import { CurrencyCode, MoneySchema, RateTableSchema } from "../money/index.ts";
import { EvidenceSchema, LineSchema, SettledSchema, ShopSchema } from "../price/index.ts";
import { DateText, Fraction, FractionToOne, Id, languages, PeriodText } from "../record/index.ts";
import { KinshipSchema, StashItemSchema, SupplySchema } from "../supply/index.ts";
import { KitSchema, MarketSchema, TierSchema } from "../worth/index.ts";
import { EpisodeLanguage, RemakeSchema } from "./remake.ts";
import { WorkbookSchema } from "./schema.ts";

/** What the definitions are called, and what a check in code says that a schema would not show. */
function definitions() {
  const names = z.registry<{ id: string; format?: string; pattern?: string; description?: string }>();
  names.add(DateText, { id: "Date", format: "date" });
  names.add(PeriodText, { id: "Period", pattern: "^\\d{4}-(0[1-9]|1[0-2])$" });
  names.add(Id, { id: "Id", pattern: "^[^/]+$" });
  names.add(CurrencyCode, { id: "Currency", pattern: "^[A-Z]{3}$" });
  names.add(Fraction, { id: "Decimal" });
  names.add(FractionToOne, { id: "FractionToOne" });
  names.add(MoneySchema, { id: "Money" });
  names.add(RateTableSchema, { id: "Rates" });
  names.add(ColourSchema, { id: "Colour" });
  names.add(SupplySchema, { id: "Supply" });
  names.add(StashItemSchema, { id: "StashItem" });
  names.add(KinshipSchema, { id: "Kinship" });
  names.add(EvidenceSchema, { id: "Evidence" });
  names.add(SettledSchema, { id: "Settled" });
  names.add(LineSchema, { id: "Line" });
  names.add(ShopSchema, { id: "Shop" });
  names.add(TierSchema, { id: "Tier" });
  names.add(MarketSchema, { id: "Market" });
  names.add(KitSchema, { id: "Kit" });
  names.add(RemakeSchema, { id: "Remake" });
  names.add(EpisodeLanguage, {
    id: "TextLanguage",
    description: `one of ${languages.join(", ")}; else as if left out`,
  });
  return names;
}

/**
 * The format as JSON Schema 2020-12, made from the schemas that read it. It says what a single field may
 * hold; ids that must be unique or must exist are beyond it and are checked by `readWorkbook`.
 */
export const jsonSchema = (): unknown => ({
  title: "Understudy workbook, version 1",
  ...z.toJSONSchema(WorkbookSchema, { target: "draft-2020-12", io: "input", metadata: definitions() }),
});
