/** The words of what is opened while a kit is logged: sources, forms, corrections, a pasted list. In English. */
export const kitLogWords = {
  claims: {
    who: "Who or what says so",
    when: "When",
    keep: "Keep it",
    cancel: "Leave it",
    change: "change",
    valueMissing: "Write what it says.",
  },

  settle: {
    title: "Where sources differ",
    text: "Choose what to go with. All that was said stays on record.",
    choose: (field: string) => `${field}: what to go with`,
    stands: "stands in the line",
    misfit: "cannot stand in this field as it is",
    reason: "Why",
    reasonHint: "such as: read off the thing itself",
    verb: "Go with this",
    notYet: "Choose one of them first",
    settled: (field: string, value: string) => `${field}: went with ${value}`,
    because: (reason: string, day: string) => `${reason}, ${day}`,
    reopen: "open again",
  },

  variants: {
    title: "Sent in several forms",
    text: "The line goes by one of them; the others are kept.",
    none: "Add a form if some got another colour or kind.",
    follow: "go by this one",
    remove: "take out",
    write: "Another form, as you would say it",
    verb: "Add this form",
    notYet: "Write what it is first",
    reads: (name: string, facts: string) => `Understood: ${name}${facts ? `, ${facts}` : ""}`,
  },

  errata: {
    title: "What the maker put right",
    none: "No correction noted.",
    add: "Note a correction",
    about: (names: string) => `About ${names}`,
    whole: "About the whole kit",
    date: "When it came",
    says: "What it says",
    lines: "Lines it is about",
    keep: "Keep it",
    cancel: "Leave it",
    change: "change",
    remove: "remove",
    missing: "Write what the maker put right.",
  },

  pasted: {
    change: "put right",
    done: "done",
    label: (number: number) => `Line ${number} of the list`,
    price: (price: string) => `Keep ${price} as a price found`,
    priceInName: "Keep the price as a price found, not in the name",
    currency: "Currency",
    pricesAre: "The price is",
    kinds: { card: "what the card says", shop: "a shop price", list: "a list price" },
  },

  guess: {
    title: "A colour guessed from its name",
    text: (name: string, hex: string) =>
      `Nobody has given the colour of “${name}”. It is drawn as ${hex}, what such a name mostly stands for.`,
    spread: (units: string) =>
      `The thing itself may lie up to ${units} away, where 1 is just seen side by side and 20 is another colour. How sure it is: little.`,
    better: "A better colour takes its place: type its code above, or pick it from a photo.",
  },

  photo: {
    pick: "Pick it from a photo",
    choose: "Choose a photo",
    unreadable: "This is no picture that the browser can read.",
    large: "This picture is too large. Choose one below 60 megapixels.",
    hint: "Point at the colour. With keys: arrows move the ring, Enter takes what is in it.",
    whiteHint: "Now point at something white in the same light: paper, or the card.",
    asWhite: "Point at white",
    asColour: "Point at the colour",
    canvas: "The photo, to point at",
    found: (hex: string, spread: string) => `${hex}; within the ring it varies by ${spread}`,
    noWhite: "Without a white the light of the photo is in the colour.",
    withWhite: "The light is taken out by the white you pointed at.",
    clipped: "The white is too bright to tell its own colour, so it was left out.",
    take: "Use this colour",
    close: "Close the photo",
    gone: "The photo is not kept.",
  },

  copy: {
    from: "Start from an earlier kit",
    none: "from nothing",
    prices: "Count its prices in as what earlier cards said",
    told: (lead: string, kit: string, withPrices: boolean) =>
      `${lead} All is copied from ${kit}, ${withPrices ? "its prices as what earlier cards said" : "without its prices"}. Take out what was not in this one.`,
    source: (kit: string) => `as in ${kit}`,
  },
};
