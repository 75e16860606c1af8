import type { tidyWords as en } from "../en/tidy.ts";

/** Ord för att hålla Förrådet i ordning. Antal kommer in som de skrivs. */
export const tidyWords: typeof en = {
  title: "Håll ordning i förrådet",
  tabs: {
    doubles: "Dubbletter",
    unused: "Oanvänt på ett år",
    many: "Många likadana",
    low: "Snart slut och slut",
  },
  leads: {
    doubles: "Det som kan vara en och samma sak, inkommen två gånger.",
    unused: "Det som inget omtag det senaste året har använt.",
    many: "Färger som du har många gånger om.",
    low: "Det som snart är slut, är slut eller har torkat ut.",
  },
  leadsMore: {
    doubles: "Gör en sak av dem, eller säg att de inte är samma; då får du inte frågan igen.",
    many: "Tre eller fler av samma sort som ingen kan skilja åt i bruk: inom 2,5 från den i mitten. Det som är slut räknas inte.",
    low: "Det som snart är slut kommer först. Rätta skicket här när du vet bättre.",
  },
  unusedSince: (date) =>
    `De har inte haft någon roll i ett omtag som du arbetat med sedan ${date}, och inte varit bland grundsakerna. Det du fått under året är inte med, inte heller det som är slut; det som saknar dag räknas som gammalt.`,
  nones: {
    doubles: "Inga två saker ser ut som en",
    unused: "Allt har använts under året",
    many: "Ingen färg finns många gånger om",
    low: "Inget håller på att ta slut",
  },

  groups: (count, isOne) => (isOne ? "1 grupp" : `${count} grupper`),
  moreGroups: (count) => `Visa fler (${count} kvar)`,
  owned: (count) => `har ${count}`,
  counts: {
    all: (count) => `${count}, hopräknat`,
    once: (count) => `${count}, en sak som skrevs upp två gånger`,
  },

  whys: {
    gtin: "samma streckkod",
    code: "samma tillverkare, serie och nummer",
    name: "lika i allt som namnger dem",
    nearly: "nästan samma namn, i en tillverkares serie",
  },
  nearlyApart: (apart) => `nästan samma namn, i en tillverkares serie, ${apart} ifrån varandra i färg`,
  fields: {
    owned: "Hur många",
    name: "Namn",
    maker: "Tillverkare",
    line: "Serie",
    code: "Nummer",
    gtin: "Streckkod",
    colour: "Färg",
    lightfast: "Ljusäkthet",
    safety: "Säkerhet",
    place: "Var den bor",
    paid: "Betalat",
    opened: "Öppnad",
    boughtForThis: "Köpt för ett omtag?",
    fromKit: "Från kitet",
  },
  yes: "ja",
  no: "nej",
  mergeText: "Foton, etiketter, tvillingar och anteckningar samlas, och omtagen går vidare med den enda.",
  otherKinds: "De är av olika sort och kan inte vara en. Rätta sorten först, eller håll isär dem.",
  merge: (count) => (count === 2 ? "Gör en av de två" : `Gör en av alla ${count}`),
  mergeNamed: (name) => `Gör en av ${name} och dubbletterna`,
  apart: "De är inte samma",
  apartNamed: (name) => `${name} och dubbletterna är inte samma`,

  alike: (count, kind, colour) => `${count} nästan lika: ${kind}, ${colour}`,
  makers: (count) => `från ${count} tillverkare`,
  pieces: (count) => `${count} stycken i allt`,
};
