import type { ChartFaults } from "./index.ts";

const onceMore = "fotografera kartan i delar, och läs dem en i taget";

/** Vad som kan vara fel, på svenska. */
export const chartFaults: ChartFaults = {
  "broken-photo": { problem: "bilden är inte hel", remedy: "välj den igen, eller ta om den" },
  "no-rows": { problem: "färre än en", remedy: "skriv ett heltal från 1 och uppåt" },
  "no-columns": { problem: "färre än en", remedy: "skriv ett heltal från 1 och uppåt" },
  "many-rows": { problem: "fler än 60", remedy: onceMore },
  "many-columns": { problem: "fler än 60", remedy: onceMore },
  "corner-outside": {
    problem: "ett hörn ligger utanför bilden",
    remedy: "märk ut alla fyra i den",
  },
  "corners-cross": {
    problem: "hörnen korsar varandra, eller ligger på en linje",
    remedy: "märk ut dem i ordning runt kartan",
  },
  "too-small": {
    problem: "färgproverna är för små i den här bilden",
    remedy: "ta den på närmare håll",
  },
  "spot-outside": {
    problem: "en punkt ligger utanför bilden",
    remedy: "märk ut bart papper i den",
  },
  "wrong-gap": {
    problem: "inte mellan 0 och 0,6",
    remedy: "skriv hur stor del av vägen mellan två färgprover som är bar",
  },
  "dark-white": {
    problem: "för mörkt för vitt papper",
    remedy: "skriv en ljushet från 50 till 100",
  },
  "too-bright": {
    problem: "pappret är ljusare än kameran kunde se",
    remedy: "ta om bilden i svagare ljus",
  },
  "no-paper": {
    problem: "inget bart papper hittades runt färgproverna",
    remedy: "märk ut några ställen med bart papper",
  },
};
