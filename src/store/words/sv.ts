import type { storeWords as en } from "./en.ts";

const onScreen = "Det som sparats tidigare finns kvar, och ändringen syns ännu på skärmen.";
const nothingChanged = "Inget ändrades.";

const faults: typeof en.faults = {
  quota: {
    problem: "Det finns ingen plats kvar för den här ändringen.",
    safe: onScreen,
    remedy: "Spara en kopia nu, eller frigör utrymme och försök igen.",
  },
  interrupted: {
    problem: "Webbläsaren avbröt innan ändringen var sparad.",
    safe: onScreen,
    remedy: "Spara en kopia nu, eller försök igen.",
  },
  closed: {
    problem: "Webbläsaren har stängt platsen där ändringar sparas.",
    safe: onScreen,
    remedy: "Spara en kopia nu, ladda om fliken och försök igen.",
  },
  newer: {
    problem: "En nyare version av appen har använts här, så den här fliken kan bara läsa.",
    safe: nothingChanged,
    remedy: "Ladda om fliken så får du den nya, eller spara en kopia nu.",
  },
  stale: {
    problem: "Något hann ändras i en annan flik.",
    safe: "Nu visar båda flikarna samma sak, och inget gick förlorat.",
    remedy: "Se hur det ser ut nu, och försök igen.",
  },
  damaged: {
    problem: "Det som är sparat här går inte att läsa.",
    safe: "Det är orört.",
    remedy: "Återställ en säkerhetskopia, eller försök igen.",
  },
  unavailable: {
    problem: "Webbläsaren sparar inget här: ett privat fönster, eller avstängd lagring.",
    safe: "Du kan arbeta, men bara tills fliken stängs.",
    remedy: "Spara en kopia innan dess, eller öppna appen i ett vanligt fönster.",
  },
};

/** Fields with their preposition; of the rest, an act only names what they belong to. */
const fields: ReadonlyMap<string, string> = new Map([
  ["acquired", "dagen då du fick"],
  ["boughtForThis", "om du köpte"],
  ["colour", "färgen på"],
  ["kits", "antalet kit för"],
  ["label", "namnet på"],
  ["line", "serien för"],
  ["maker", "tillverkaren av"],
  ["name", "namnet på"],
  ["note", "anteckningen om"],
  ["paid", "vad du betalade för"],
  ["place", "platsen för"],
  ["price", "priset för"],
  ["qty", "antalet av"],
  ["received", "om du redan har fått"],
  ["state", "skicket på"],
  ["tags", "etiketterna på"],
  ["twinOf", "tvillingarna till"],
  ["valuedOn", "prisdagen för"],
  ["want", "hur mycket du skulle använda av"],
]);

const units = { piece: "st", sheet: "ark" } as const;

export const storeWords: typeof en = {
  faults,
  nothingChanged,
  /** The act before which an upgrade of the database keeps a snapshot. */
  updateApp: "Uppdatera appen",
  nothingTo: { undo: "Det finns inget att ångra.", redo: "Det finns inget att göra om." },
  goOn: "Fortsätt från det som finns.",
  goBack: (label) => `Gå tillbaka till före: ${label}`,

  unnamed: "ett material utan namn",
  change: (name, of) => `Ändra ${fields.has(name) ? `${fields.get(name)} ` : ""}${of}`,
  changeHome: (name) => (name === "market" ? "Ändra hemmarknaden" : "Ändra marknaderna att visa"),

  nameBook: (name) => `Döp arbetsboken till ${name}`,
  setWeight: (trait, family) => `Ändra hur mycket ${trait} räknas för ${family}`,
  addKinships: (count: number) =>
    count === 1 ? "Koppla ihop två produkter" : `Koppla ihop ${count} par produkter`,
  kinship: "en koppling mellan två produkter",
  removeKinship: "Koppla isär två produkter",
  addPhoto: "Lägg till ett foto",
  removePhoto: "Ta bort ett foto",
  addPhotoOf: (item: string) => `Lägg till ett foto av ${item}`,
  removePhotoOf: (item: string) => `Ta bort ett foto av ${item}`,
  addRequest: "Lägg till ett önskemål",
  request: "ett önskemål",
  removeRequest: "Ta bort ett önskemål",

  addKit: (kit) => `Skriv in kitet ${kit}`,
  removeKit: (kit, remakes) => `Ta bort kitet ${kit}${remakes > 0 ? ` och ${remakes} omtag` : ""}`,
  addTier: (tier, kit) => `Lägg till nivån ${tier} i ${kit}`,
  tier: (tier) => `nivån ${tier}`,
  removeTier: (tier, kit) => `Ta bort nivån ${tier} från ${kit}`,

  addLine: (line, kit) => `Lägg till ${line} i ${kit}`,
  addLines: (count, kit) => `Lägg till ${count} ${count === 1 ? "rad" : "rader"} i ${kit}`,
  moveLine: (line, kit) => `Flytta ${line} i ${kit}`,
  removeLine: (line, kit) => `Ta bort ${line} från ${kit}`,
  addEvidence: (line) => `Lägg till ett hittat pris för ${line}`,
  evidence: (line) => `ett hittat pris för ${line}`,
  removeEvidence: (line) => `Ta bort ett hittat pris för ${line}`,
  settle: (line) => `Välj priset att gå på för ${line}`,
  unsettle: (line) => `Lämna priset att gå på öppet för ${line}`,

  startRemake: (kit) => `Börja på ett omtag av ${kit}`,
  remake: "omtaget",
  removeRemake: (kit) => `Ta bort omtaget av ${kit}`,
  setPick: (line) => `Välj vad som ersätter ${line}`,
  clearPick: (line) => `Rensa vad som ersätter ${line}`,
  setVerdict: (line) => `Ge ett omdöme om ${line}`,
  addLogEntry: "Anteckna något i loggen",
  removeLogEntry: "Ta bort en anteckning ur loggen",

  addStashItem: (item) => `Lägg till ${item} i förrådet`,
  bringIn: (items, list) => (list === "" ? `Hämta in ${items}` : `Hämta in ${items} ur ${list}`),
  takeColours: (items) => `Ta färgerna på ${items} ur ett foto`,
  items: (count) => `${count} ${count === 1 ? "sak" : "saker"}`,
  takeOut: (count, unit, item) => `Ta ut ${count} ${units[unit]} av ${item}`,
  putIn: (count, unit, item) => `Lägg till ${count} ${units[unit]} av ${item}`,
  removeStashItem: (item) => `Ta bort ${item} från förrådet`,

  changeSeveral: (items) => `Ändra ${items}`,
  mergeItems: (count, item) => `Slå ihop ${count} till en: ${item}`,
  keepApart: (item) => `Håll isär ${item} och dubbletterna`,

  bringBack: "Ta tillbaka det som togs bort",
  removeSample: "Ta bort exemplet",
};
