import { language } from "../device.ts";

const english = {
  addMarket: (name: string) => `Add the market ${name}`,
  removeMarket: (name: string) => `Remove the market ${name}`,
  addShop: (name: string) => `Add the shop ${name}`,
  removeShop: (name: string) => `Remove the shop ${name}`,
  addParcel: "Add a parcel of your own",
  parcel: "a parcel",
  removeParcel: "Remove a parcel",
  addRates: (day: string) => `Add the rates of ${day}`,
  removeRates: (day: string) => `Remove the rates of ${day}`,
};

const swedish: typeof english = {
  addMarket: (name) => `Lägg till marknaden ${name}`,
  removeMarket: (name) => `Ta bort marknaden ${name}`,
  addShop: (name) => `Lägg till butiken ${name}`,
  removeShop: (name) => `Ta bort butiken ${name}`,
  addParcel: "Lägg till ett eget paket",
  parcel: "ett paket",
  removeParcel: "Ta bort ett paket",
  addRates: (day) => `Lägg till kurserna för ${day}`,
  removeRates: (day) => `Ta bort kurserna för ${day}`,
};

/** The names of acts about markets, shops, parcels and rates: apart from the others, so that the first visit is light. */
export const marketWords = { en: english, sv: swedish }[language];
