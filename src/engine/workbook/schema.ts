import * as z from "zod/mini";
import { WeightsSchema } from "../match/index.ts";
import { RateTableSchema } from "../money/index.ts";
import { ShopSchema } from "../price/index.ts";
import { Count, DateText, Id, listOf, maybe, Text } from "../record/index.ts";
import { KinshipSchema, StashItemSchema } from "../supply/index.ts";
import { KitSchema, MarketSchema, ParcelSchema } from "../worth/index.ts";
import { RemakeSchema } from "./remake.ts";

/** The version of the format that this engine writes, and the newest it reads. */
export const formatVersion = 1;
export const formatName = "understudy-workbook";

const PhotoSchema = z.looseObject({ id: Id, type: maybe(Text), sha256: maybe(Text), bytes: maybe(Count) });

const RequestSchema = z.looseObject({
  id: Id,
  text: maybe(Text),
  by: maybe(Text),
  date: maybe(DateText),
  kit: maybe(Id),
});

/** One person's data in one file. Every list may be left out; unknown fields are kept. */
export const WorkbookSchema = z.looseObject({
  format: z.literal(formatName),
  version: z.int().check(z.minimum(1, "below 1; write 1")),
  name: maybe(Text),
  home: maybe(z.looseObject({ market: maybe(Id), reportMarkets: listOf(Id) })),
  markets: listOf(MarketSchema),
  rates: listOf(RateTableSchema),
  shops: listOf(ShopSchema),
  parcels: listOf(ParcelSchema),
  kinships: listOf(KinshipSchema),
  weights: maybe(WeightsSchema),
  photos: listOf(PhotoSchema),
  stash: listOf(StashItemSchema),
  kits: listOf(KitSchema),
  remakes: listOf(RemakeSchema),
  requests: listOf(RequestSchema),
});

export type Workbook = z.infer<typeof WorkbookSchema>;
export type Photo = z.infer<typeof PhotoSchema>;
export type Request = z.infer<typeof RequestSchema>;
