/** The words of keeping the Stash right, in English. Counts come in as printed. */
export const tidyWords = {
  title: "Keep the stash right",
  tabs: {
    doubles: "Doubles",
    unused: "Unused for a year",
    many: "Many times over",
    low: "Running low and used up",
  },
  leads: {
    doubles: "What may be one thing, entered twice.",
    unused: "What no remake of the last year has used.",
    many: "Colours that are owned many times over.",
    low: "What runs low, is used up or has dried out.",
  },
  leadsMore: {
    doubles: "Make one of them, or say that they are not the same; you are not asked again.",
    many: "Three or more of one kind that nobody can tell apart in use: within 2.5 of the one in their middle. What is used up does not count.",
    low: "The low ones first. Put their state right here once you know better.",
  },
  unusedSince: (date: string) =>
    `They have had no part in a remake worked on since ${date}, and were not among its basics. What you got within the year is left out, and what is used up; what has no day counts as old.`,
  nones: {
    doubles: "No two things look like one",
    unused: "Everything has been used within the year",
    many: "No colour is owned many times over",
    low: "Nothing runs low",
  },

  groups: (count: string, isOne: boolean) => (isOne ? "1 group" : `${count} groups`),
  moreGroups: (count: string) => `Show more (${count} left)`,
  owned: (count: string) => `have ${count}`,
  counts: {
    all: (count: string) => `${count}, added up`,
    once: (count: string) => `${count}, one thing written down twice`,
  },

  whys: {
    gtin: "the same bar code",
    code: "the same maker, line and number",
    name: "the same in all that names them",
    nearly: "nearly the same name, of one maker's line",
  },
  nearlyApart: (apart: string) => `nearly the same name, of one maker's line, ${apart} apart in colour`,
  fields: {
    owned: "How many",
    name: "Name",
    maker: "Maker",
    line: "Line",
    code: "Number",
    gtin: "Bar code",
    colour: "Colour",
    lightfast: "Lightfast",
    safety: "Safety",
    place: "Where it lives",
    paid: "Paid",
    opened: "Opened on",
    boughtForThis: "Bought for a remake?",
    fromKit: "From the kit",
  },
  yes: "yes",
  no: "no",
  mergeText: "Photos, tags, twins and notes are put together, and remakes go on with the one.",
  otherKinds:
    "They are of different kinds, so they cannot be one. Put the kind right first, or keep them apart.",
  merge: (count: number) => (count === 2 ? "Make one of the two" : `Make one of all ${count}`),
  mergeNamed: (name: string) => `Make one of ${name} and its doubles`,
  apart: "They are not the same",
  apartNamed: (name: string) => `${name} and its doubles are not the same`,

  alike: (count: string, kind: string, colour: string) => `${count} nearly alike: ${kind}, ${colour}`,
  makers: (count: number) => `from ${count} makers`,
  pieces: (count: string) => `${count} pieces in all`,
};
