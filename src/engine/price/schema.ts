import * as z from "zod/mini";
import { MoneySchema } from "../money/index.ts";
import {
  DateText,
  Fraction,
  FractionToOne,
  Id,
  listOf,
  maybe,
  PositiveNumber,
  Text,
  WholeFromOne,
} from "../record/index.ts";
import { SupplySchema } from "../supply/index.ts";

/** How much one price bought. Left out: the same as the line. */
export const PackSchema = z.looseObject({
  count: maybe(WholeFromOne),
  sheets: maybe(WholeFromOne),
  size: maybe(z.union([Text, z.tuple([PositiveNumber, PositiveNumber])])),
  ml: maybe(PositiveNumber),
});

/** One dated observation of a price, with its source. `low` and `high` are for guesses. */
export const EvidenceSchema = z.looseObject({
  id: Id,
  kind: z.enum(["list", "shop", "card", "precedent", "guess", "not-sold"]),
  price: maybe(MoneySchema),
  reducedFrom: maybe(MoneySchema),
  plusTax: maybe(Fraction),
  pack: maybe(PackSchema),
  market: maybe(Id),
  shop: maybe(Id),
  inStock: maybe(z.boolean()),
  date: maybe(DateText),
  low: maybe(MoneySchema),
  high: maybe(MoneySchema),
  line: maybe(z.string().check(z.minLength(1, "no line is named; write it as kit/line"))),
  source: maybe(Text),
});

/** The price a person goes with, or the method they go with, and why. `market` null: for all. */
export const SettledSchema = z.looseObject({
  kind: maybe(z.enum(["list", "street"])),
  market: maybe(Id),
  price: maybe(MoneySchema),
  method: maybe(Text),
  reason: maybe(Text),
});

/** One source's word about one field of a line, and how sure it is. */
export const ClaimSchema = z.looseObject({
  field: maybe(Text),
  value: maybe(z.unknown()),
  sure: maybe(z.enum(["seen", "told", "believed", "unreadable"])),
  source: maybe(Text),
  date: maybe(DateText),
});

/** What a person went with where sources differ about a field, what was said against it, and why. */
export const DecidedSchema = z.looseObject({
  field: maybe(Text),
  value: maybe(z.unknown()),
  against: maybe(z.array(z.unknown())),
  reason: maybe(Text),
  date: maybe(DateText),
});

/** One line of a kit's contents with all that is known of its price. */
export const LineSchema = z.looseObject({
  id: Id,
  qty: maybe(WholeFromOne),
  supply: SupplySchema,
  want: maybe(FractionToOne),
  exclusive: maybe(z.boolean()),
  variants: listOf(SupplySchema),
  claims: listOf(ClaimSchema),
  decided: listOf(DecidedSchema),
  evidence: listOf(EvidenceSchema),
  settled: listOf(SettledSchema),
  note: maybe(Text),
});

/** A shop with its postage. `postageTo` is for orders sent abroad; a market not named is not served. */
export const ShopSchema = z.looseObject({
  id: Id,
  name: Text,
  market: Id,
  postage: maybe(MoneySchema),
  freeFrom: maybe(MoneySchema),
  postageTo: maybe(z.record(Id, z.nullable(MoneySchema))),
});

export type Pack = z.infer<typeof PackSchema>;
export type Evidence = z.infer<typeof EvidenceSchema>;
export type Settled = z.infer<typeof SettledSchema>;
export type Claim = z.infer<typeof ClaimSchema>;
export type Decided = z.infer<typeof DecidedSchema>;
export type Line = z.infer<typeof LineSchema>;
export type Shop = z.infer<typeof ShopSchema>;
