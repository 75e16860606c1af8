/** What the search field calls the acts, where the button on the page needs fewer words. */
export const actWords = {
  logKit: "Log a kit",
  addToStash: "Add to the stash",
  bringIn: "Bring in a list or a file",
  bringInAlso: "import a spreadsheet csv excel xlsx ods tsv paste a table",
  addSet: "Add a whole set of colours",
  addSetAlso: "paste names codes hex numbers colour chart range",
  kin: "See what is the same under another label",
  kinAlso: "twins own label kinship same colour refill link products",
  takeUp: "Take up a kit",
  addMarket: "Add a market",
  addRates: "Put in a day's rates",
  addShop: "Add a shop",
  addParcel: "Add a parcel",
  saveCopy: "Save a copy of everything",
  restore: "Bring a copy back",
  /** Other words that people would look for. */
  saveCopyAlso: "back up now backup",
  restoreAlso: "restore a backup",
  addLine: "Add a line",
  addTier: "Add a tier",
  openFetch: "Go to what to fetch",
  writeVerdict: "Give a verdict",
  writeStep: "Write down a step",
  /** On the page itself: the next line that nothing is known about yet. */
  nextWithout: (name: string) => `Next without a price: ${name}`,
};
