import type { kinWords as en } from "../en/kin.ts";
import { listed } from "./say.ts";

/** Orden för vad som är samma sak som vad, på svenska. */
export const kinWords: typeof en = {
  title: "Samma under annat namn",
  lead: "Säg en gång vilka produkter, eller hela serier, som är desamma.",
  leadMore:
    "Ersättare, kit du har haft och dubbletter vet det sedan, också när du bara har den ena eller ingen av dem.",
  note: "Tillverkare ändrar vad som finns i tuben. Skriv var du har det ifrån, och hur säkert det är.",
  known: (count, isOne) => (isOne ? "1 koppling" : `${count} kopplingar`),
  add: "Koppla ihop två produkter",
  verb: (count, isOne) => (isOne ? "Koppla ihop dem" : `Koppla ihop de här ${count} paren`),
  cancel: "Stäng",
  removed: "Kopplade isär två produkter",
  remove: "Koppla isär dem",
  change: "Ändra",
  close: "Stäng",
  about: (what) => `: ${what}`,
  caption: "Vad som är samma sak som vad",
  columns: { how: "Vad de är", sure: "Hur säkert" },

  empty: "Inget är ihopkopplat än",
  emptyText:
    "En butiks egna varor är ofta någon annans under nytt namn. Koppla ihop de två en gång, eller två hela serier nummer för nummer, så vet varje jämförelse om det.",

  kind: "Vad är de?",
  kinds: {
    twin: "samma sak under två namn",
    "same-colour": "samma färg i en annan form eller storlek",
    "refill-fits": "den ena fyller på den andra",
  },
  noKind: "hör ihop",
  one: "Den ena",
  other: "Den andra",
  maker: "Tillverkare",
  line: "Serie",
  code: "Nummer",
  codeHint: "lämna det öppet för hela serien",
  pairing: "Hur hör de två serierna ihop?",
  pairings: {
    code: "samma nummer i båda",
    name: "samma namn i båda",
    pairs: "efter en lista med nummer",
  },
  byCode: "nummer för nummer",
  byName: "namn för namn",
  pairs: "Par av nummer",
  pairsHint: "ett par per rad, den första seriens nummer först: 12 = 340, eller två celler ur ett kalkylblad",
  odd: (lines) =>
    `${listed(lines.map((line) => `”${line}”`))} ${lines.length === 1 ? "är inget par av nummer" : "är inga par av nummer"}.`,
  sure: "Hur säkert?",
  sures: { known: "känt", told: "berättat av någon", believed: "en gissning" },
  notSaid: "inte sagt",
  looks: "Hur de skiljer sig till utseendet",
  source: "Var du har det ifrån",
  date: "När",
  sideMissing: "Skriv tillverkaren eller serien.",
  pairsMissing: "Skriv minst ett par av nummer.",
  itself: "De två är en och samma. Ändra en av dem.",
  number: (code) => `nr ${code}`,
  unnamed: "utan namn",
  mine: (count, number) => (number === 0 ? "ingen av mina" : `${count} av mina`),
  and: (one, other) => `${one} och ${other}`,
  fromItem: "Koppla ihop den med något du inte har",
};
