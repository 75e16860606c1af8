import type { worthWords as en } from "../en/worth.ts";
import { listed } from "./say.ts";

/** A count of lines that stand without a list or without a shop price. */
const lines = (count: number): string => (count === 1 ? "En rad saknar" : `${count} rader saknar`);

/** The words of a kit's worth, in Swedish. Markets are named after a colon where "in" would need their gender. */
export const worthWords: typeof en = {
  joined: listed,
  unnamedTier: "Nivå utan namn",
  quoted: (name) => `”${name}”`,

  finding: {
    every: (market) => `I ${market} lönar det sig på varje nivå, både till listpris och till butikspris.`,
    everyShop: (market) => `I ${market} lönar det sig på varje nivå, till butikspriser.`,
    one: (market) => `I ${market} lönar det sig.`,
    with: (market, tiers) => `I ${market} lönar det sig med ${listed(tiers)}.`,
    unpricedHangs: (market, count) =>
      `I ${market} saknar ${count} rader pris, så det går inte att säga om det lönar sig.`,
    hangs: (market, items) => `I ${market} hänger det på ${listed(items)} om det lönar sig.`,
    never: (market, tiers) =>
      tiers === 1 ? `I ${market} lönar det sig inte.` : `I ${market} lönar det sig inte på någon nivå.`,
    noPrices: (market) => `Ingen rad har ett pris i ${market} än.`,
    noPricesMore:
      "Om det lönar sig räknas ut av priserna som hittats för raderna: skriv in några under Priser.",
    noTiers: (market, total) => `I ${market} är innehållet värt ${total} till butikspriser.`,

    notWith: (tiers) => `Med ${listed(tiers)} lönar det sig inte, till butikspriser.`,
    hangsWith: (tiers, items) => `Med ${listed(tiers)} hänger det på ${listed(items)}.`,
    byList: (said) => `Till listpris ${said}.`,
    wanted: (said) => `Räknas bara det jag skulle använda ${said}.`,
    sayEvery: "lönar det sig på varje nivå",
    sayPays: "lönar det sig",
    sayNot: "lönar det sig inte",
    sayWith: (tiers) => `lönar det sig med ${listed(tiers)}`,
    sayHangs: (items) => `hänger det på ${listed(items)}`,
    atLeast: (count) => `${lines(count)} listpris eller butikspris, så varje summa är ”minst”.`,
  },

  note: {
    rate: (rate, date) => `${rate} den ${date}.`,
    noRate: "Alla priser var redan i den här valutan.",
    stale: "Det är mer än en vecka före dagen som gäller.",
    home: "Skickas härifrån, så det finns ingen gräns att passera.",
    from: (origin) => `Skickas från ${origin}.`,
    fromUnknown: "Varifrån det skickas är inte sagt, så ingen gräns räknas med.",
    free: "Inget tas ut vid gränsen.",
    charged: "Skatt och avgifter vid gränsen är inräknade.",
    noRule: (market) => `Ingen gränsregel för ${market} passar, så ingen räknas med.`,
    notOffered: (tiers) => `Erbjuds inte här: ${listed(tiers)}.`,
  },

  chart: {
    title: "Vad som ligger i det, utlagt på rad i pengar",
    rows: { list: "Till listpris", street: "Till butikspris", wanted: "Bara det jag skulle använda" },
    caption: (currency) =>
      `${currency}. Varje material är så brett som sitt pris; numret är radens nedan. Stapeln i slutet går från det lägsta till det högsta som summan kan vara, och strecket i den är den troliga siffran. En prickad linje är vad ett kit kostar: förbi linjen lönar det sig.`,
    text: (rows, tiers) => `${rows}${tiers === "" ? "" : ` Ett kit kostar: ${tiers}.`}`,
    row: (name, total, range) => `${name}: ${total}${range}.`,
    range: (low, high) => `, från ${low} till ${high}`,
    tier: (name, cost) => `${name} ${cost}`,
    from: (low, high) => `${low} till ${high}`,
  },

  tiers: {
    title: "Mot varje nivå",
    caption: (market) => `Vad ett kit kostar i ${market} på varje nivå, och vad det ger`,
    tier: "Nivå",
    goods: "Ett kit",
    postage: "Frakt",
    border: "Gräns",
    cost: "Kostar",
    list: "Till listpris",
    shop: "Till butikspris",
    wanted: "Det jag skulle använda",
    none: "inget",
    payment: (price, kits) => (kits === 1 ? price : `${price} för ${kits}`),
    pays: "lönar sig",
    not: "lönar sig inte",
    hangs: (item) => `hänger på ${item}`,
    empty: "Ingen nivå att ställa det mot än",
    emptyText:
      "En nivå är ett sätt att betala: månad för månad, eller ett år på en gång. Lägg in en under Innehåll.",
    toContents: "Lägg till en nivå",
    nowhere: (market) => `Ingen nivå för det här kitet erbjuds i ${market}.`,
    nowhereText: "På vilka marknader en nivå erbjuds står vid nivån, under Innehåll.",
    least: "minst",
  },

  making: {
    title: (tier) => `Hur kostnaden för ${tier} blir till`,
    price: "En betalning",
    feeOnce: "tillägg på en betalning",
    discount: "avdrag på en betalning",
    postage: "Frakt för ett kit",
    noPostage: "Ingen frakt är angiven",
    atRate: (rate, date) => `efter ${rate} från ${date}`,
    tax: (percent) => `${percent} % skatt tillagd`,
    kits: (kits) => `för ${kits} kit, alltså delat med ${kits}`,
    rounded: "avrundat",
    goods: "Ett kit",
    customs: "Värdet som tullen räknar på",
    ofGoods: "varorna",
    ofBoth: "varorna och frakten",
    duty: "Tull",
    dutyFree: (limit) => `ingen: fritt upp till ${limit}`,
    dutyRate: (percent) => `${percent} % av det värdet`,
    vat: "Skatt",
    vatRate: (percent, base) => `${percent} % av varor, frakt och tull, ${base}`,
    vatFree: (limit) => `ingen: fritt upp till ${limit}`,
    none: "inget",
    handling: "Hanteringsavgift",
    handlingDue: "eftersom tull eller skatt ska betalas",
    handlingFree: "ingen, eftersom inget annat ska betalas",
    total: "Ett kit kostar",
    noBorder: "Inget tas ut vid gränsen",
    noBorderHome: "det skickas härifrån",
    noBorderRule: "ingen regel för den här marknaden passar för det land det skickas från",
    noBorderOrigin: "varifrån det skickas är inte sagt",
    caution: "En uppskattning: tullen eller skattemyndigheten i landet dit det skickas avgör.",
    about: (tier) => `kostnaden för ${tier}`,
  },

  lines: {
    title: "Rad för rad",
    caption: (market) => `Listpris och butikspris i ${market} för varje rad`,
    number: "Rad",
    item: "Sak",
    list: "Listpris",
    shop: "Butikspris",
    how: "Hur",
    howList: "Hur listpriset hittades",
    howShop: "Hur butikspriset hittades",
    wanted: "Skulle använda",
    all: "allt",
    none: "inget",
    share: (percent) => `${percent} av 100`,
    noPrice: "inget pris än",
    together: "Tillsammans",
    times: (qty, each) => `${qty} à ${each}`,
    range: (low, high) => `${low} till ${high}`,
    least: (amount) => `minst ${amount}`,
    close: "stäng",
    listOf: (name) => `listpriset på ${name}`,
    shopOf: (name) => `butikspriset på ${name}`,
    noneFound: "Inget pris har hittats än.",
    toPrices: "Lägg till ett under Priser",
    other: "Andra vägar till en siffra",
    found: "Priser som hittats",
  },

  how: {
    settled: "priset jag går på",
    list: "listpris här",
    converted: (money) => `omräknat från ${money}`,
    convertedShop: (money) => `butik, från ${money}`,
    card: "kortet säger det",
    precedents: "vad tidigare kort sa",
    scaled: (pack) => (pack === null ? "från en annan förpackning" : `omräknat från ${pack}`),
    guess: "en gissning",
    shop: (date) => (date === null ? "butik" : `butik, ${date}`),
    listStandsIn: "listpriset får gälla",
    pack: {
      piece: (count) => `${count} st`,
      sheet: (count) => `${count} ark`,
      ml: (ml) => `${ml} ml`,
    },
  },

  found: {
    kinds: {
      list: "listpris",
      shop: "butikspris",
      card: "kortet",
      precedent: "ett tidigare kort",
      guess: "en gissning",
      "not-sold": "letat, säljs inte styckvis",
    },
    undated: "utan datum",
    outOfStock: "inte i lager",
    reduced: (money) => `nedsatt från ${money}`,
    plusTax: (percent) => `${percent} % skatt tillkommer`,
  },

  beside: {
    title: "När det har betalat sig",
    text: "Genom innehållet uppifrån och ner, rad för rad.",
    textLeast:
      "Genom innehållet uppifrån och ner, rad för rad. En rad utan pris räknas inte än, så det kan bli tidigare.",
    textNoBorder: "Det som gränsen tar ut är inte med här.",
    caption: "Raden där varje nivå har betalat sig",
    tier: "Nivå",
    list: "Till listpris",
    listPostage: "med frakt",
    listPostageLong: "Till listpris, med frakt",
    shop: "Till butikspris",
    shopPostageLong: "Till butikspris, med frakt",
    at: (number, name) => `${number}, ${name}`,
    never: "inte alls",
    notYet: "inte med priserna hittills",
    card: (card, found, count, all) =>
      count === all
        ? `Kortet säger ${card} för alltihop; ${found} har hittats.`
        : `Kortet säger ${card} för ${count} av de ${all} raderna; för samma rader har ${found} hittats.`,
    cardTitle: "Vad kortet säger",
    borderTitle: "Utan gränsen",
    border: (tier, cost, list, shop) =>
      `${tier} skulle kosta ${cost}: ${list} till listpris, ${shop} till butikspris.`,
    parcels: (count, origin, charged) => {
      if (count === 1)
        return `Mitt enda paket från ${origin} ${charged === 1 ? "kostade något" : "kostade inget"} vid gränsen.`;
      const hit = charged === 0 ? "inget" : charged === 1 ? "ett" : String(charged);
      return `Av mina ${count} paket från ${origin} kostade ${hit} något vid gränsen.`;
    },
    unknown: (count) =>
      count === 1 ? "För ett är det inte antecknat." : `För ${count} är det inte antecknat.`,
    noParcels: (origin) => `Inget eget paket från ${origin} är antecknat än.`,
  },

  share: {
    use: (percent, tier) =>
      `Använd ungefär ${percent} av 100 av det så lönar sig ${tier}, till butikspriser.`,
    also: (tier, percent) => `${tier}: ${percent}.`,
    over: (tier) => `Även om allt används lönar sig ${tier} inte till butikspriser.`,
    overAll: "Även om allt används lönar sig ingen nivå till butikspriser.",
  },

  copy: {
    act: "Kopiera tabellen",
    done: "Tabellen är kopierad",
    failed: "Webbläsaren lät inte tabellen kopieras. Markera den och kopiera den för hand.",
    offer: "Kopiera tabellen över nivåer",
    offerLines: "Kopiera tabellen över rader",
  },

  missing: {
    noLines: "Inget att räkna än",
    noLinesText: "Skriv in vad kitet innehöll. Värdet räknas ihop här, mot varje nivå och marknad.",
    toContents: "Skriv in innehållet",
    noMarkets: "För vilket land ska det räknas?",
    noMarketsText: "Värdet räknas för en marknad: ett land med dess valuta. Säg vilken som är din.",
    noDay: "Vilken dags priser gäller?",
    noDayText: "Alla belopp i kitet räknas om efter en och samma dags kurser.",
    day: "Priser per",
    rates: "En växelkurs saknas",
    ratesText:
      "Inget gissas: utan den finns det ingen siffra. Lägg in den dagens kurser, eller en tidigare dags.",
    fault: (problem, remedy) => `${problem}. Så rättar du det: ${remedy}.`,
    lead: (market) => `Vad det är värt i ${market} går inte att räkna ut än.`,
  },

  marketsLabel: "Marknad",
};
