import { listed } from "./say.ts";

/** A count of lines that stand without a list or without a shop price. */
const lines = (count: number): string => (count === 1 ? "One line lacks" : `${count} lines lack`);

/** The words of a kit's worth, in English. */
export const worthWords = {
  joined: listed,
  unnamedTier: "Unnamed tier",
  quoted: (name: string) => `“${name}”`,

  finding: {
    every: (market: string) => `In ${market} it pays on every tier, by list and by shop price.`,
    everyShop: (market: string) => `In ${market} it pays on every tier, at shop prices.`,
    one: (market: string) => `In ${market} it pays.`,
    with: (market: string, tiers: readonly string[]) => `In ${market} it pays with ${listed(tiers)}.`,
    unpricedHangs: (market: string, count: number) =>
      `In ${market} ${count} lines have no price yet, so it cannot be told whether it pays.`,
    hangs: (market: string, items: readonly string[]) =>
      `In ${market} it hangs on ${listed(items)} whether it pays.`,
    never: (market: string, tiers: number) =>
      tiers === 1 ? `In ${market} it does not pay.` : `In ${market} it does not pay on any tier.`,
    noPrices: (market: string) => `No line has a price in ${market} yet.`,
    noPricesMore:
      "Whether it pays is worked out from the prices found for its lines: put some in under Prices.",
    noTiers: (market: string, total: string) => `In ${market} the contents come to ${total} at shop prices.`,

    notWith: (tiers: readonly string[]) =>
      `${listed(tiers)} ${tiers.length === 1 ? "does" : "do"} not, at shop prices.`,
    hangsWith: (tiers: readonly string[], items: readonly string[]) =>
      `${listed(tiers)} ${tiers.length === 1 ? "hangs" : "hang"} on ${listed(items)}.`,
    byList: (said: string) => `By list price it ${said}.`,
    wanted: (said: string) => `Counting only what I would use, it ${said}.`,
    sayEvery: "pays on every tier",
    sayPays: "pays",
    sayNot: "does not",
    sayWith: (tiers: readonly string[]) => `pays with ${listed(tiers)}`,
    sayHangs: (items: readonly string[]) => `hangs on ${listed(items)}`,
    atLeast: (count: number) => `${lines(count)} a list or a shop price, so every total is “at least”.`,
  },

  note: {
    rate: (rate: string, date: string) => `${rate} on ${date}.`,
    noRate: "Every price was in this currency already.",
    stale: "That is more than a week before the day that counts.",
    home: "Sent from here, so there is no border to cross.",
    from: (origin: string) => `Ships from ${origin}.`,
    fromUnknown: "Where it ships from is not said, so no border is counted.",
    free: "Nothing is charged at the border.",
    charged: "Tax and fees at the border are counted in.",
    noRule: (market: string) => `No border rule for ${market} fits, so none is counted.`,
    notOffered: (tiers: readonly string[]) => `Not offered here: ${listed(tiers)}.`,
  },

  chart: {
    title: "What is in it, laid end to end in money",
    rows: { list: "At list price", street: "At shop price", wanted: "Only what I would use" },
    caption: (currency: string) =>
      `${currency}. Every supply is as wide as its price; its number is that of its line below. The bar at the end runs from the lowest to the highest the total may be, and its stroke is the likely figure. A dotted line is what one kit costs: past the line, it pays.`,
    text: (rows: string, tiers: string) => `${rows}${tiers === "" ? "" : ` One kit costs: ${tiers}.`}`,
    row: (name: string, total: string, range: string) => `${name}: ${total}${range}.`,
    range: (low: string, high: string) => `, from ${low} to ${high}`,
    tier: (name: string, cost: string) => `${name} ${cost}`,
    from: (low: string, high: string) => `${low} to ${high}`,
  },

  tiers: {
    title: "Against each tier",
    caption: (market: string) => `What one kit costs in ${market} on each tier, and what it brings`,
    tier: "Tier",
    goods: "One kit",
    postage: "Postage",
    border: "Border",
    cost: "Costs",
    list: "By list price",
    shop: "By shop price",
    wanted: "What I would use",
    none: "none",
    payment: (price: string, kits: number) => (kits === 1 ? price : `${price} for ${kits}`),
    pays: "pays",
    not: "does not",
    hangs: (item: string) => `hangs on ${item}`,
    empty: "No tier to set it against yet",
    emptyText: "A tier is one way to pay: month by month, or a year at once. Put one in under Contents.",
    toContents: "Put in a tier",
    nowhere: (market: string) => `No tier of this kit is offered in ${market}.`,
    nowhereText: "Which markets a tier is offered in stands with the tier, under Contents.",
    least: "at least",
  },

  making: {
    title: (tier: string) => `How the cost of ${tier} comes about`,
    price: "One payment",
    feeOnce: "added to one payment",
    discount: "off one payment",
    postage: "Postage of one kit",
    noPostage: "No postage is given",
    atRate: (rate: string, date: string) => `at ${rate} of ${date}`,
    tax: (percent: string) => `${percent} % tax added`,
    kits: (kits: number) => `for ${kits} kits, so divided by ${kits}`,
    rounded: "rounded",
    goods: "One kit",
    customs: "Value that customs counts",
    ofGoods: "the goods",
    ofBoth: "the goods and the postage",
    duty: "Duty",
    dutyFree: (limit: string) => `none: free up to ${limit}`,
    dutyRate: (percent: string) => `${percent} % of that value`,
    vat: "Tax",
    vatRate: (percent: string, base: string) => `${percent} % of goods, postage and duty, ${base}`,
    vatFree: (limit: string) => `none: free up to ${limit}`,
    none: "none",
    handling: "Handling fee",
    handlingDue: "because duty or tax is due",
    handlingFree: "none, as nothing else is due",
    total: "One kit costs",
    noBorder: "Nothing is charged at the border",
    noBorderHome: "it is sent from here",
    noBorderRule: "no rule of this market fits where it is sent from",
    noBorderOrigin: "where it is sent from is not said",
    caution: "An estimate: the customs or tax authority of the country it goes to decides.",
    about: (tier: string) => `the cost of ${tier}`,
  },

  lines: {
    title: "Line by line",
    caption: (market: string) => `Each line's list and shop price in ${market}`,
    number: "Line",
    item: "Item",
    list: "List",
    shop: "Shop",
    how: "How",
    howList: "How the list price was found",
    howShop: "How the shop price was found",
    wanted: "Would use",
    all: "all",
    none: "none",
    share: (percent: string) => `${percent} in 100`,
    noPrice: "no price yet",
    together: "Together",
    times: (qty: number, each: string) => `${qty} at ${each}`,
    range: (low: string, high: string) => `${low} to ${high}`,
    least: (amount: string) => `at least ${amount}`,
    close: "close",
    listOf: (name: string) => `the list price of ${name}`,
    shopOf: (name: string) => `the shop price of ${name}`,
    noneFound: "No price has been found yet.",
    toPrices: "Add one under Prices",
    other: "Other ways to a figure",
    found: "Prices found",
  },

  how: {
    settled: "the price I go with",
    list: "list price here",
    converted: (money: string) => `converted from ${money}`,
    convertedShop: (money: string) => `shop, from ${money}`,
    card: "the card says so",
    precedents: "what earlier cards said",
    scaled: (pack: string | null) => (pack === null ? "from another pack" : `scaled from ${pack}`),
    guess: "a guess",
    shop: (date: string | null) => (date === null ? "shop" : `shop, ${date}`),
    listStandsIn: "list figure stands in",
    pack: {
      piece: (count: number) => (count === 1 ? "1 piece" : `${count} pieces`),
      sheet: (count: number) => (count === 1 ? "1 sheet" : `${count} sheets`),
      ml: (ml: string) => `${ml} ml`,
    },
  },

  found: {
    kinds: {
      list: "list price",
      shop: "shop price",
      card: "the card",
      precedent: "an earlier card",
      guess: "a guess",
      "not-sold": "looked, not sold singly",
    },
    undated: "undated",
    outOfStock: "not in stock",
    reduced: (money: string) => `reduced from ${money}`,
    plusTax: (percent: string) => `${percent} % tax to be added`,
  },

  beside: {
    title: "When it has paid for itself",
    text: "Going down the contents as they stand, line by line.",
    textLeast:
      "Going down the contents as they stand, line by line. A line without a price counts nothing yet, so it may be sooner.",
    textNoBorder: "What the border charges is left out here.",
    caption: "The line at which each tier has paid for itself",
    tier: "Tier",
    list: "By list price",
    listPostage: "with postage",
    listPostageLong: "By list price, with postage",
    shop: "By shop price",
    shopPostageLong: "By shop price, with postage",
    at: (number: number, name: string) => `${number}, ${name}`,
    never: "not at all",
    notYet: "not by the prices so far",
    card: (card: string, found: string, count: number, all: number) =>
      count === all
        ? `The card says ${card} for all of it; ${found} was found.`
        : `The card says ${card} for ${count} of the ${all} lines; for the same ones ${found} was found.`,
    cardTitle: "What the card says",
    borderTitle: "Without the border",
    border: (tier: string, cost: string, list: string, shop: string) =>
      `${tier} would cost ${cost}: ${list} by list price, ${shop} by shop price.`,
    parcels: (count: number, origin: string, charged: number) => {
      const of = count === 1 ? `My one parcel from ${origin}` : `Of my ${count} parcels from ${origin}`;
      if (count === 1) return `${of} was ${charged === 1 ? "" : "not "}charged.`;
      return `${of}, ${charged === 0 ? "none was" : charged === 1 ? "one was" : `${charged} were`} charged.`;
    },
    unknown: (count: number) =>
      count === 1 ? "Of one it is not written down." : `Of ${count} it is not written down.`,
    noParcels: (origin: string) => `No parcel of my own from ${origin} is noted yet.`,
  },

  share: {
    use: (percent: string, tier: string) =>
      `Use about ${percent} in 100 of it and ${tier} pays, at shop prices.`,
    also: (tier: string, percent: string) => `${tier}: ${percent}.`,
    over: (tier: string) => `Even used up whole, ${tier} does not pay at shop prices.`,
    overAll: "Even used up whole, no tier pays at shop prices.",
  },

  copy: {
    act: "Copy table",
    done: "The table is copied",
    failed: "The browser did not let the table be copied. Select it and copy it by hand.",
    offer: "Copy the table of tiers",
    offerLines: "Copy the table of lines",
  },

  missing: {
    noLines: "Nothing to count yet",
    noLinesText: "Put in what the kit held. Its worth is added up here, against each tier and market.",
    toContents: "Put in the contents",
    noMarkets: "For which country shall it be counted?",
    noMarketsText: "Worth is counted for a market: a country with its currency. Say which one is yours.",
    noDay: "As of which day do prices count?",
    noDayText: "All amounts of this kit are converted at the rates of one day.",
    day: "Prices as of",
    rates: "An exchange rate is missing",
    ratesText:
      "Nothing is guessed: without it there is no figure. Add the rates of that day, or of a day before it.",
    fault: (problem: string, remedy: string) => `${problem}. To put it right, ${remedy}.`,
    lead: (market: string) => `What it is worth in ${market} cannot be counted yet.`,
  },

  marketsLabel: "Market",
};
