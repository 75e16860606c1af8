import { listed } from "./say.ts";

/** The words of what is the same as what, in English. Counts come in as printed. */
export const kinWords = {
  title: "Same under another label",
  lead: "Say once which products, or whole lines, are the same.",
  leadMore:
    "Stand-ins, kits you had before and doubles then know it, also where you own one of the two or neither.",
  note: "Makers change what is in the tube. Say where you have it from, and how surely.",
  known: (count: string, isOne: boolean) => (isOne ? "1 link" : `${count} links`),
  add: "Link two products",
  verb: (count: string, isOne: boolean) => (isOne ? "Link them" : `Link these ${count} pairs`),
  cancel: "Close",
  removed: "Unlinked two products",
  remove: "Unlink them",
  change: "Change",
  close: "Close",
  about: (what: string) => `: ${what}`,
  caption: "What is the same as what",
  columns: { how: "What they are", sure: "How surely" },

  empty: "Nothing is linked yet",
  emptyText:
    "Own-label goods are often another maker's under a new name. Link the two once, or two whole lines number by number, and every match knows.",

  kind: "What are they?",
  kinds: {
    twin: "the same under two labels",
    "same-colour": "the same colour in another body or size",
    "refill-fits": "one refills the other",
  },
  noKind: "linked",
  one: "One",
  other: "The other",
  maker: "Maker",
  line: "Line",
  code: "Number",
  codeHint: "leave it open for the whole line",
  pairing: "How are the two lines paired?",
  pairings: {
    code: "the same number in both",
    name: "the same name in both",
    pairs: "by a list of numbers",
  },
  byCode: "number for number",
  byName: "name for name",
  pairs: "Pairs of numbers",
  pairsHint:
    "one pair a line, the first line's number first: 12 = 340, or two cells copied from a spreadsheet",
  odd: (lines: readonly string[]) =>
    `${listed(lines.map((line) => `“${line}”`))} ${lines.length === 1 ? "is no pair of numbers" : "are no pairs of numbers"}.`,
  sure: "How surely?",
  sures: { known: "known", told: "told by somebody", believed: "believed" },
  notSaid: "not said",
  looks: "How they differ to look at",
  source: "Where you have it from",
  date: "When",
  sideMissing: "Write the maker or the line.",
  pairsMissing: "Write at least one pair of numbers.",
  itself: "The two are one and the same. Change one of them.",
  number: (code: string) => `no. ${code}`,
  unnamed: "unnamed",
  mine: (count: string, number: number) => (number === 0 ? "none of mine" : `${count} of mine`),
  and: (one: string, other: string) => `${one} and ${other}`,
  fromItem: "Link it with what is not on your shelf",
};
