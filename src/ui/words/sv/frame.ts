import type { frameWords as en } from "../en/frame.ts";

/** Ramens och delarnas ord, på svenska. */
export const frameWords: typeof en = {
  product: "Understudy",
  skip: "Hoppa till sidan",
  placesLabel: "Platser",
  tidies: {
    doubles: "Dubbletter i förrådet",
    unused: "Oanvänt på ett år",
    many: "Färger du har många gånger om",
    low: "Snart slut och slut",
  },
  places: {
    desk: "Skrivbordet",
    kits: "Kit",
    stash: "Förrådet",
    remakes: "Omtag",
    markets: "Marknader",
    keepSafe: "Säkert förvar",
    parts: "Delar",
    words: "Våra ord",
    nowhere: "Ingenting här",
  },
  more: "Mer",
  documentTitle: (title, place) =>
    title === place ? `${title} - Understudy` : `${title} - ${place} - Understudy`,
  printed: (sheet, day) => `${sheet}. Utskrivet ${day}.`,

  find: {
    label: "Hitta ett kit, en sak, en åtgärd",
    short: "Hitta",
    key: "/",
    slip: "Som streckkod stämmer inte den sista siffran med de andra",
    none: (text) => `Inget heter ”${text}”`,
    found: (count) => (count === 1 ? "1 träff" : `${count} träffar`),
    more: (count) => `och ${count} till`,
    apart: (figure) => `${figure} ifrån`,
    kinds: {
      place: "plats",
      kit: "kit",
      stash: "i förrådet",
      remake: "omtag",
      act: "gör detta",
      word: "vad det betyder",
    },
    keysOff: "Stäng av kortkommandon med en tangent",
    keysOn: "Slå på kortkommandon med en tangent",
    undo: "Ångra senaste ändringen",
    redo: "Gör om",
  },

  saving: {
    saved: (time) => (time === null ? "Sparat" : `Sparat ${time}`),
    saving: "Sparar",
    failed: "Inte sparat",
    readOnly: "Bara läsning",
  },

  opening: "Öppnar din anteckningsbok",
  trouble: {
    copy: "Spara en kopia nu",
    again: "Försök igen",
    restore: "Återställ en säkerhetskopia",
    emptied: "Webbläsaren har tömt din anteckningsbok",
    emptiedText: (records, date) =>
      `Den innehöll ${records} poster den ${date}. Återställ en säkerhetskopia för att få tillbaka dem.`,
  },
  unknownPage: "Adressen leder ingenstans. Den kan vara felskriven, eller så har det den gällde tagits bort.",
  toDesk: "Till Skrivbordet",
  notYet: (place) => `${place} kommer att finnas här`,

  faultMark: "Fel:",
  faultsTitle: (count) => (count === 1 ? "En sak att rätta till" : `${count} saker att rätta till`),
  optional: "om det är känt",
  terms: { all: "Alla våra ord", here: "Ord som används här" },
  why: "varför?",
  close: "stäng",
  about: (what) => `, ${what}`,
  undo: "Ångra",
  undone: (label) => `Ångrat: ${label}`,
  redone: (label) => `Gjort om: ${label}`,
  undoKey: "Ctrl Z",
  dismiss: "Stäng",
  nearness: (figure, words) => `${figure} av 100, ${words}`,
  ofHundred: "av 100",

  colourGuessed: "gissad efter namnet",

  chooser: {
    use: (text) => `Använd ”${text}”`,
    none: "Inget liknande än",
    count: (count) => `${count} att välja på`,
    open: "Visa valen",
  },

  amount: {
    amount: "Belopp",
    currency: "Valuta",
    letter: (sign, fix) => `”${sign}” är en bokstav. Skriv ${fix}.`,
    noDigits: "Det finns ingen siffra i det. Skriv ett belopp, till exempel 12,50.",
    negative: "Ett belopp kan inte vara under noll. Skriv det utan minus.",
    strange: (sign) => `”${sign}” hör inte till ett belopp. Skriv siffror, till exempel 12,50.`,
    grouping: "Punkterna och kommana blir inget belopp. Skriv det enkelt, till exempel 1234,50.",
    ask: (text) => `${text} kan läsas på två sätt. Vilket menas?`,
  },

  date: {
    hint: "till exempel 30 april 2026",
    monthHint: "till exempel april 2026",
    noYear: "Årtalet saknas. Skriv det med fyra siffror, till exempel 30 april 2026.",
    shortYear: "Skriv årtalet med fyra siffror, till exempel 2026.",
    noSuchDay: (text) => `Det finns ingen ${text}. Skriv en dag som finns i kalendern.`,
    unread: "Det går inte att läsa som ett datum. Skriv 30 april 2026 eller 2026-04-30.",
    unreadMonth: "Det går inte att läsa som en månad. Skriv april 2026 eller 2026-04.",
    ask: (text) => `${text} kan läsas på två sätt. Vilket menas?`,
    today: "i dag",
    yesterday: "i går",
  },
};
