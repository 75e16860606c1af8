import type { RateTable } from "../../engine/money/index.ts";
import { plainDate, type Shop } from "../../engine/price/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import type { Market, Parcel } from "../../engine/worth/index.ts";
import { type ActDraft, type Path, rateKey } from "../journal/index.ts";
import { act, put, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change } from "./words.ts";

export const addMarket = (market: Market): ActDraft =>
  act(`Add the market ${market.name}`, put("markets", market));

export const editMarket = (market: Market, path: Path, value: unknown): ActDraft =>
  act(change(path, market.name), set("markets", market.id, path, value));

/** Removes a market with its shops and the prices found there. */
export const removeMarket = (book: Workbook, market: Market): ActDraft => ({
  label: `Remove the market ${market.name}`,
  changes: thenMend(book, [removal("markets", market.id)]),
});

export const addShop = (shop: Shop): ActDraft => act(`Add the shop ${shop.name}`, put("shops", shop));

export const editShop = (shop: Shop, path: Path, value: unknown): ActDraft =>
  act(change(path, shop.name), set("shops", shop.id, path, value));

/** Removes a shop; prices found there stay, without its name. */
export const removeShop = (book: Workbook, shop: Shop): ActDraft => ({
  label: `Remove the shop ${shop.name}`,
  changes: thenMend(book, [removal("shops", shop.id)]),
});

export const addParcel = (parcel: Parcel): ActDraft =>
  act("Add a parcel of your own", put("parcels", parcel));

export const editParcel = (parcel: Parcel, path: Path, value: unknown): ActDraft =>
  act(change(path, "a parcel"), set("parcels", parcel.id, path, value));

export const removeParcel = (parcel: Parcel): ActDraft =>
  act("Remove a parcel", removal("parcels", parcel.id));

/** Adds a day's rates, or replaces those of the same day and base. */
export const addRates = (table: RateTable): ActDraft =>
  act(`Add the rates of ${plainDate(table.date)}`, put("rates", table));

export const removeRates = (table: RateTable): ActDraft =>
  act(`Remove the rates of ${plainDate(table.date)}`, removal("rates", rateKey(table)));
