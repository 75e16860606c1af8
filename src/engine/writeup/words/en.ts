import type { Fault } from "../../record/index.ts";

const months = "January February March April May June July August September October November December".split(
  " ",
);
const uses = ["never", "hardly ever", "now and then", "often", "most weeks", "every day"];

/** Where a caution's words come from, and when somebody last looked. */
const usual = { source: "the usual caution, common practice, no source", checked: "2026-11-25" };

/** Every word of a write-up that is ours. */
export const writeupWords = {
  /** An amount or a rate, from its decimal text. */
  amount: (text: string) => text,
  /** A month in words: "April 2026". */
  month: (period: string) => {
    const [year = "", month = ""] = period.split("-");
    return `${months[Number(month) - 1] ?? month} ${year}`;
  },
  /** Between the cells of a table's row that is written as a line. */
  cellGap: ", ",

  /** How the supplies came to me: short for the opening, and as a sentence. */
  disclosures: {
    own: { short: "All mine already.", sentence: "Everything shown was mine already; nobody paid for this." },
    bought: {
      short: "All bought myself.",
      sentence: "I bought everything shown myself; nobody paid for this.",
    },
    gifted: {
      short: "With gifts.",
      sentence: "Some of what is shown was given to me free of charge by its maker or seller.",
    },
    lent: { short: "With loans.", sentence: "Some of what is shown was lent to me by its maker or seller." },
    sponsored: { short: "Advertisement: paid for.", sentence: "This is paid advertising: it was sponsored." },
    affiliate: {
      short: "Advertising links.",
      sentence: "Some links are advertising: I earn a commission when you buy through them.",
    },
  },

  result: (filled: number, all: number) => `${filled} of ${all} from my own shelves.`,
  kitSection: "kit",
  kit: (name: string, maker: string, month: string) => `The kit: ${name}, by ${maker}, ${month}.`,
  received: "I was sent this kit once, so the same items had to stay out of it.",
  prompt: (asked: string) => `The prompt: ${asked}`,
  remade: (from: string, to: string | null) =>
    `Remade from ${from}${to === null ? "" : ` to ${to}`}, nothing bought for it.`,
  chapters: "Chapters",
  links: "Links",
  tagSection: "tags",

  standIns: "What was in it, and what stood in",
  standInHead: ["In the kit", "From my shelves", "How near", "Why"],
  mixed: (names: readonly string[]) => names.join(" with "),
  nothingClose: "nothing close on my shelves",
  leftOpen: "left out on purpose",
  ownPick: "my own pick",
  near: (hundredths: number, verdict: string) => `${hundredths} of 100, ${verdict}`,
  lastResort: "nothing else would do, so the one I was sent",

  beside: "Beside the kit",
  gone: "something no longer here",
  basic: (name: string, role: string) => `Basics added: ${name}${role ? ` (to ${role})` : ""}`,
  shown: (name: string, why: string) => `Shown only, not used in the piece: ${name}${why ? `. ${why}` : ""}`,
  bent: (rule: number | null, why: string) => `Rule ${rule ?? ""} bent${why ? `: ${why}` : ""}`,

  worth: (place: string, currency: string) => `Worth in ${place}, ${currency}`,
  together: (list: string, shop: string, wanted: string) =>
    `The contents together: list ${list}, shop ${shop}, only what I would use ${wanted}`,
  unpriced: (names: string) => `Without a list or a shop price: ${names}`,
  worthHead: [
    "Tier",
    "one kit costs",
    "of it at the border",
    "by list price",
    "by shop price",
    "by what I would use",
  ],
  least: (amount: string) => `at least ${amount}`,
  pays: "pays",
  doesNotPay: "does not pay",
  hangsOn: (line: string) => `hangs on ${line}`,
  someLine: "one line",

  prices: (place: string, currency: string) => `Prices in ${place}, ${currency}`,
  priceHead: ["Item", "list", "shop"],
  noPrice: "no price",
  sum: "Together",
  found: (place: string) => `How the prices in ${place} were found`,
  noShopPrice: "No shop price: the list price stands in.",

  basis: "What the figures rest on",
  pricesAsOf: (day: string) => `List and shop prices as of ${day}; prices change.`,
  notWorkedOut: ({ problem, remedy }: Fault) => `The worth is not worked out: ${problem}; ${remedy}`,
  rates: (base: string, quotes: readonly string[], day: string) =>
    `1 ${base} = ${quotes.join(", ")} on ${day}`,
  staleRates: "Some of these rates are more than a week older than that day.",
  border:
    "Duty, tax and fees at a border are estimates; the customs or tax authority of the country of arrival decides.",

  verdict: "My verdict",
  use: (often: number) => `I would use it ${uses[often] ?? ""}`,
  buy: "would buy it",
  notBuy: "would not buy it",
  replaces: (what: string) => `it would replace ${what}`,
  corrections: "Corrections",
  correction: (at: string, said: string | null, meant: string | null) =>
    `${at ? `At ${at} ` : ""}I said ${said ?? "something else"}; I meant ${meant ?? "otherwise"}`,
  questions: "Tell me",

  cautionTitle: "Take care",
  cautions: {
    solvent: { line: "Spirit-based inks and oil media: open a window, keep flames away.", ...usual },
    aerosol: {
      line: "Sprays: outdoors or by an open window, away from flames, and do not breathe the mist.",
      ...usual,
    },
    dust: {
      line: "Pastel, charcoal and powdered colour: do not breathe the dust, wipe up damp; some pigments are toxic.",
      ...usual,
    },
    blade: { line: "Blades: cut away from the hand, on a mat.", ...usual },
  },
  label: (name: string, says: string) => `${name}, its label says: ${says}`,
  defer: "Read the label and the maker's safety data sheet; local rules come first.",
  screenColour: "A colour on a screen is an approximation: swatch on the real paper before relying on it.",

  leftOut: (titles: readonly string[]) => `Left out for length: ${titles.join("; ")}.`,
  restLeftOut: "The rest is left out for length.",

  reminders: {
    disclosure:
      "Say how the supplies came to you: bought, gifted, lent, sponsored, affiliate or your own. Say it in the video too.",
    chapters:
      "Chapters need at least three times, the first 0:00, each ten seconds or more after the last. Until then they stay out.",
    tags: "Three to five tags work best; more than 15 are cut.",
  },
};
