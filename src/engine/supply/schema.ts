import * as z from "zod/mini";
import { ColourSchema } from "../colour/index.ts";
import { MoneySchema } from "../money/index.ts";
import { Count, DateText, Id, listOf, maybe, Text } from "../record/index.ts";
import { type Family, lightfastness, traitsByFamily } from "./traits.ts";

const common = {
  name: Text,
  maker: maybe(Text),
  line: maybe(Text),
  code: maybe(Text),
  gtin: maybe(Text),
  colour: maybe(ColourSchema),
  lightfast: maybe(z.enum(lightfastness)),
  safety: maybe(Text),
};

/** What a supply of any family has: all that can be checked where the family is not known. */
export const AnyFamilySchema = z.looseObject(common);

const family = <F extends Family>(name: F) =>
  z.looseObject({
    family: z.literal(name),
    ...common,
    traits: maybe(z.looseObject(traitsByFamily[name])),
  });

/** What a supply is: its family, how it is named, its colour and the traits of its family. */
export const SupplySchema = z.discriminatedUnion("family", [
  family("marker"),
  family("liner"),
  family("graphite"),
  family("colour-pencil"),
  family("paint"),
  family("ink"),
  family("pastel"),
  family("brush"),
  family("eraser"),
  family("paper"),
  family("tool"),
  family("other"),
]);

/** A supply somebody owns. Stock changes are amounts (`owned`, `sheetsLeft`). */
export const StashItemSchema = z.looseObject({
  id: Id,
  supply: SupplySchema,
  owned: maybe(Count),
  sheetsLeft: maybe(Count),
  state: maybe(z.enum(["ok", "low", "empty", "dried"])),
  acquired: maybe(DateText),
  paid: maybe(MoneySchema),
  opened: maybe(DateText),
  boughtForThis: maybe(z.boolean()),
  place: maybe(Text),
  twinOf: listOf(Id),
  fromKit: maybe(Id),
  photos: listOf(Id),
  note: maybe(Text),
  tags: listOf(Text),
});

const Side = z.looseObject({ maker: maybe(Text), line: maybe(Text), code: maybe(Text) });

/** Two products, or whole lines of them, that are the same, share a colour, or fit as refill. */
export const KinshipSchema = z.looseObject({
  id: Id,
  kind: maybe(z.enum(["twin", "same-colour", "refill-fits"])),
  a: maybe(Side),
  b: maybe(Side),
  by: maybe(z.enum(["code", "name"])),
  sure: maybe(z.enum(["known", "told", "believed"])),
  looks: maybe(Text),
  source: maybe(Text),
  date: maybe(DateText),
});

export type Supply = z.infer<typeof SupplySchema>;
export type SupplyOf<F extends Family> = Extract<Supply, { family: F }>;
export type StashItem = z.infer<typeof StashItemSchema>;
export type Kinship = z.infer<typeof KinshipSchema>;
