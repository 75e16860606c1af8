import type { RateTable } from "../../engine/money/index.ts";
import { plainDate, type Shop } from "../../engine/price/index.ts";
import type { Workbook } from "../../engine/workbook/index.ts";
import type { Market, Parcel } from "../../engine/worth/index.ts";
import { language } from "../device.ts";
import { type ActDraft, type Path, rateKey } from "../journal/index.ts";
import { marketWords as words } from "../words/markets.ts";
import { act, put, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change } from "./words.ts";

/** @param livesThere whether it is where the person lives, as the first one is taken to be */
export const addMarket = (market: Market, livesThere = false): ActDraft =>
  act(
    words.addMarket(market.name),
    put("markets", market),
    ...(livesThere ? [set("book", "book", ["home", "market"], market.id)] : []),
  );

export const editMarket = (market: Market, path: Path, value: unknown): ActDraft =>
  act(change(path, market.name), set("markets", market.id, path, value));

/** Removes a market with its shops and the prices found there. */
export const removeMarket = (book: Workbook, market: Market): ActDraft => ({
  label: words.removeMarket(market.name),
  changes: thenMend(book, [removal("markets", market.id)]),
});

export const addShop = (shop: Shop): ActDraft => act(words.addShop(shop.name), put("shops", shop));

export const editShop = (shop: Shop, path: Path, value: unknown): ActDraft =>
  act(change(path, shop.name), set("shops", shop.id, path, value));

/** Removes a shop; prices found there stay, without its name. */
export const removeShop = (book: Workbook, shop: Shop): ActDraft => ({
  label: words.removeShop(shop.name),
  changes: thenMend(book, [removal("shops", shop.id)]),
});

export const addParcel = (parcel: Parcel): ActDraft => act(words.addParcel, put("parcels", parcel));

export const editParcel = (parcel: Parcel, path: Path, value: unknown): ActDraft =>
  act(change(path, words.parcel), set("parcels", parcel.id, path, value));

export const removeParcel = (parcel: Parcel): ActDraft =>
  act(words.removeParcel, removal("parcels", parcel.id));

/** Adds a day's rates, or replaces those of the same day and base. */
export const addRates = (table: RateTable): ActDraft =>
  act(words.addRates(plainDate(table.date, language)), put("rates", table));

export const removeRates = (table: RateTable): ActDraft =>
  act(words.removeRates(plainDate(table.date, language)), removal("rates", rateKey(table)));
