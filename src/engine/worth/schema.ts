import * as z from "zod/mini";
import { CurrencyCode, MoneySchema } from "../money/index.ts";
import { LineSchema } from "../price/index.ts";
import { DateText, Fraction, Id, listOf, maybe, PeriodText, Text, WholeFromOne } from "../record/index.ts";

/** One way to subscribe. `price` is one payment, for all its `kits`. */
export const TierSchema = z.looseObject({
  id: Id,
  label: maybe(Text),
  kits: WholeFromOne,
  price: MoneySchema,
  postagePerKit: maybe(MoneySchema),
  discount: maybe(MoneySchema),
  feeOnce: maybe(MoneySchema),
  postageTo: maybe(z.record(Id, z.nullable(MoneySchema))),
  plusTax: maybe(Fraction),
  markets: listOf(Id),
});

/** What a kit sent to a market from another one is charged at the border. Rates are fractions. */
export const ImportRuleSchema = z.looseObject({
  from: maybe(z.union([z.literal("any"), z.array(Id)])),
  dutyRate: maybe(Fraction),
  taxRate: maybe(Fraction),
  dutyFreeUpTo: maybe(MoneySchema),
  taxFreeUpTo: maybe(MoneySchema),
  handlingFee: maybe(MoneySchema),
  valueBasis: maybe(z.enum(["goods", "goods-and-postage"])),
});

/** Where somebody lives, for the purpose of prices: a currency and the rules of its border. */
export const MarketSchema = z.looseObject({
  id: Id,
  name: Text,
  currency: CurrencyCode,
  import: listOf(ImportRuleSchema),
});

/** A parcel of one's own and what the border charged for it. */
export const ParcelSchema = z.looseObject({
  id: Id,
  from: maybe(Id),
  to: maybe(Id),
  date: maybe(DateText),
  value: maybe(MoneySchema),
  charged: maybe(MoneySchema),
  note: maybe(Text),
});

const Source = z.looseObject({ text: maybe(Text), date: maybe(DateText), url: maybe(Text) });
/** The maker's later correction, and the lines it is about. */
export const ErratumSchema = z.looseObject({ date: maybe(DateText), lines: listOf(Id), text: maybe(Text) });

/** A kit that a subscription sent out: its contents, its tiers and where that was learned. */
export const KitSchema = z.looseObject({
  id: Id,
  maker: Text,
  title: maybe(Text),
  period: PeriodText,
  prompt: maybe(Text),
  loggedOn: maybe(DateText),
  theme: maybe(Text),
  received: maybe(z.boolean()),
  spokenMarket: maybe(Id),
  errata: listOf(ErratumSchema),
  valuedOn: maybe(DateText),
  shipsFrom: maybe(Id),
  sources: listOf(Source),
  tiers: listOf(TierSchema),
  lines: listOf(LineSchema),
  note: maybe(Text),
});

export type Tier = z.infer<typeof TierSchema>;
export type ImportRule = z.infer<typeof ImportRuleSchema>;
export type Market = z.infer<typeof MarketSchema>;
export type Parcel = z.infer<typeof ParcelSchema>;
export type Erratum = z.infer<typeof ErratumSchema>;
export type Kit = z.infer<typeof KitSchema>;
