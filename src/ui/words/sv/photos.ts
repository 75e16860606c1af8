import type { photoWords as en } from "../en/photos.ts";

/** Ord för foton av saker. */
export const photoWords: typeof en = {
  title: "Foton",
  add: "Lägg till ett foto",
  addNamed: (name) => `Lägg till ett foto av ${name}`,
  hint: "Det stannar på den här enheten, och sparas utan var och med vad det togs.",
  busy: "Tar in det …",
  added: (name) => `Lade till ett foto av ${name}`,
  twice: "Det fotot finns redan här.",
  removed: (name) => `Tog bort ett foto av ${name}`,
  remove: "Ta bort det här fotot",
  close: "Stäng",
  photoOf: (name, place, count) => (count === 1 ? `Foto av ${name}` : `Foto ${place} av ${count} på ${name}`),
  missing: "Finns inte på den här enheten. En säkerhetskopia från enheten där det togs har det.",
  missingShort: "finns inte här",
  refused: (file) => `${file} lades inte till`,
  nothingAdded: "Ingenting lades till.",
  faults: {
    empty: { problem: "Filen är tom.", remedy: "Ta om fotot eller välj en annan fil." },
    "too-large": { problem: "Filen är större än 40 MB.", remedy: "Välj ett mindre foto." },
    "too-many-pixels": {
      problem: "Fotot har fler än 52 miljoner bildpunkter, för många för att packas upp här.",
      remedy: "Gör det mindre först eller välj ett annat foto.",
    },
    "not-a-photo": {
      problem: "Filen är inget foto.",
      remedy: "Välj en bild i JPEG, PNG eller WebP.",
    },
    "unreadable-kind": {
      problem: "Webbläsaren kan inte läsa foton av det här slaget, som HEIC eller en kameras råfiler.",
      remedy:
        "Spara det som JPEG först, eller ställ in telefonens kamera på mest kompatibla format, och välj det.",
    },
    damaged: {
      problem: "Fotot är skadat eller inte helt.",
      remedy: "Kopiera det till enheten igen eller välj ett annat foto.",
    },
    "not-clean": {
      problem: "Webbläsaren lämnar kvar mer än bilden i ett foto.",
      remedy: "Öppna appen i en annan webbläsare för att lägga till det.",
    },
    lost: { problem: "Webbläsaren fick inte plats med det.", remedy: "Stäng andra flikar och försök igen." },
    unread: {
      problem: "Filen går inte att läsa.",
      remedy: "Välj den igen eller kopiera den till enheten först.",
    },
    full: {
      problem: "Det finns så många foton som en säkerhetskopia rymmer: 1 500 stycken, eller 250 MB.",
      remedy: "Ta bort foton som du inte behöver längre.",
    },
  },
};
