/**
 * The words of the frame and the parts, in English. A screen keeps its own words beside itself in the same
 * way: an object of texts and functions, so that another language is another object of the same type.
 */
export const frameWords = {
  product: "Understudy",
  skip: "Skip to the page",
  placesLabel: "Places",
  tidies: {
    doubles: "Doubles in the stash",
    unused: "Unused for a year",
    many: "Colours owned many times over",
    low: "Running low and used up",
  },
  places: {
    desk: "Desk",
    kits: "Kits",
    stash: "Stash",
    remakes: "Remakes",
    markets: "Markets",
    keepSafe: "Keep safe",
    parts: "Parts",
    words: "Our words",
    nowhere: "Nothing here",
  },
  more: "More",
  documentTitle: (title: string, place: string) =>
    title === place ? `${title} - Understudy` : `${title} - ${place} - Understudy`,
  printed: (sheet: string, day: string) => `${sheet}. Printed ${day}.`,

  find: {
    label: "Find a kit, a supply, an act",
    short: "Find",
    key: "/",
    none: (text: string) => `Nothing is called “${text}”`,
    slip: "As a bar code, its last figure does not fit the others",
    found: (count: number) => (count === 1 ? "1 found" : `${count} found`),
    more: (count: number) => `and ${count} more`,
    apart: (figure: string) => `${figure} apart`,
    kinds: {
      place: "place",
      kit: "kit",
      stash: "in the stash",
      remake: "remake",
      act: "do this",
      word: "what it means",
    },
    keysOff: "Turn single-key shortcuts off",
    keysOn: "Turn single-key shortcuts on",
    undo: "Undo the last change",
    redo: "Redo",
  },

  saving: {
    saved: (time: string | null) => (time === null ? "Saved" : `Saved ${time}`),
    saving: "Saving",
    failed: "Not saved",
    readOnly: "Read only",
  },

  opening: "Opening your notebook",
  trouble: {
    copy: "Save a copy now",
    again: "Try again",
    restore: "Restore a backup",
    emptied: "This browser has emptied your notebook",
    emptiedText: (records: string, date: string) =>
      `It held ${records} records on ${date}. Restore a backup to bring them back.`,
  },
  unknownPage: "This address leads nowhere. It may have been mistyped, or what it named was taken out.",
  toDesk: "Go to the desk",
  notYet: (place: string) => `${place} will be here`,

  faultMark: "Fault:",
  faultsTitle: (count: number) => (count === 1 ? "One thing to put right" : `${count} things to put right`),
  optional: "if known",
  terms: { all: "All our words", here: "Words used here" },
  why: "why?",
  close: "close",
  about: (what: string) => `, ${what}`,
  undo: "Undo",
  undone: (label: string) => `Undone: ${label}`,
  redone: (label: string) => `Done again: ${label}`,
  undoKey: "Ctrl Z",
  dismiss: "Close",
  nearness: (figure: number, words: string) => `${figure} of 100, ${words}`,
  ofHundred: "of 100",

  /** Of a colour that nobody gave: what its name brings to mind. */
  colourGuessed: "guessed from its name",

  chooser: {
    use: (text: string) => `Use “${text}”`,
    none: "Nothing like it yet",
    count: (count: number) => (count === 1 ? "1 to choose from" : `${count} to choose from`),
    open: "Show the choices",
  },

  amount: {
    amount: "Amount",
    currency: "Currency",
    letter: (sign: string, fix: string) => `“${sign}” is a letter. Write ${fix}.`,
    noDigits: "There is no figure in it. Write an amount, such as 12.50.",
    negative: "An amount cannot be below nought. Write it without the minus.",
    strange: (sign: string) => `“${sign}” is not part of an amount. Write figures, such as 12.50.`,
    grouping: "The points and commas do not add up to an amount. Write it plainly, such as 1234.50.",
    ask: (text: string) => `${text} can be read in two ways. Which is meant?`,
  },

  date: {
    hint: "such as 30 April 2026",
    monthHint: "such as April 2026",
    noYear: "The year is missing. Write it with four figures, such as 30 April 2026.",
    shortYear: "Write the year with four figures, such as 2026.",
    noSuchDay: (text: string) => `There is no ${text}. Write a day that the calendar has.`,
    unread: "This does not read as a date. Write it as 30 April 2026 or 2026-04-30.",
    unreadMonth: "This does not read as a month. Write it as April 2026 or 2026-04.",
    ask: (text: string) => `${text} can be read in two ways. Which is meant?`,
    today: "today",
    yesterday: "yesterday",
  },
};
