import type { actWords as en } from "../en/acts.ts";

export const actWords: typeof en = {
  logKit: "Skriv in ett kit",
  addToStash: "Lägg till i förrådet",
  bringIn: "Hämta in en lista eller fil",
  bringInAlso: "importera kalkylblad csv excel xlsx ods tsv klistra in en tabell",
  takeUp: "Ta om ett kit",
  addMarket: "Lägg till en marknad",
  addRates: "Skriv in en dags kurser",
  addShop: "Lägg till en butik",
  addParcel: "Lägg till ett paket",
  saveCopy: "Spara en kopia av allt",
  restore: "Ta tillbaka en kopia",
  saveCopyAlso: "säkerhetskopiera nu säkerhetskopia",
  restoreAlso: "återställ en säkerhetskopia",
  addLine: "Lägg till en rad",
  addTier: "Lägg till en nivå",
  openFetch: "Gå till hämtlistan",
  writeVerdict: "Ge ett omdöme",
  writeStep: "Skriv ner ett steg",
  nextWithout: (name: string) => `Nästa utan pris: ${name}`,
};
