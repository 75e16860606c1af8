const things = (count: string, isOne: boolean): string => (isOne ? "1 thing" : `${count} things`);
const sheets = (count: string, isOne: boolean): string => (isOne ? "1 sheet" : `${count} sheets`);

/** The words of what is printed of the stash, in English. Counts come in as printed. */
export const printWords = {
  /** What the search field calls them, and what else they are looked for by. */
  listAct: "Print the stash list",
  listAlso: "paper sheet inventory check the shelf tick off",
  chartAct: "Print a swatch chart",
  chartAlso: "paper colour in by hand blank cells swatches card",

  tabs: "What is printed",
  print: "Print",
  which: "What goes on it",
  all: (count: string, isOne: boolean) => `all ${things(count, isOne)}`,
  found: (count: string, isOne: boolean) => `what the search found: ${things(count, isOne)}`,
  chosen: (count: string, isOne: boolean) => `what you chose: ${things(count, isOne)}`,
  sendOn: "Print or save them",
  blank: "blank cells",
  nothing: "Nothing in the stash fits this.",
  nothingYet: "Nothing in the stash yet.",
  more: (count: string, isOne: boolean) =>
    isOne
      ? "1 more is on the sheet when it is printed."
      : `${count} more are on the sheet when it is printed.`,
  moreSheets: (count: string, isOne: boolean) =>
    `And ${sheets(count, isOne)} more like this when it is printed.`,

  list: {
    tab: "List",
    title: "Stash list",
    lead: "A box to tick for each thing that is on its shelf.",
    by: "In order of",
    place: "where it lives",
    maker: "maker and line",
    without: { place: "No place noted", maker: "Maker not known" },
    sum: (count: string, isOne: boolean) => `${things(count, isOne)}.`,
    code: "Number",
    where: { place: "Maker and line", maker: "Where" },
    have: "Have",
    state: "State",
  },

  chart: {
    tab: "Swatch chart",
    title: "Swatch chart",
    lead: "Cells to colour in by hand, each with its name, number and place.",
    leadMore: "A photo of the finished chart gives every thing its true colour.",
    note: "Print at actual size, or 100 %. Both rulers on the sheet must measure 100 mm.",
    order: "In order of",
    orders: { code: "maker and number", name: "name", hue: "hue" },
    columns: "Cells in a row",
    columnsOf: (count: string, width: string, height: string) => `${count}, each ${width} × ${height} mm`,
    leftOut: (count: string, isOne: boolean) =>
      isOne
        ? "1 thing is left out, since it leaves no colour on paper."
        : `${count} things are left out, since they leave no colour on paper.`,
    none: "Nothing here leaves a colour on paper.",
    grid: (rows: string, columns: string, width: string, height: string) =>
      `${rows} rows × ${columns} columns, cells ${width} × ${height} mm, much paper between`,
    sheetOf: (sheet: string, all: string) => `Sheet ${sheet} of ${all}`,
    picture: (sheet: string, all: string, rows: string, columns: string) =>
      `Sheet ${sheet} of ${all}: ${rows} rows of ${columns} cells to colour in`,
    ruler: "100 mm when printed at actual size",
  },
};
