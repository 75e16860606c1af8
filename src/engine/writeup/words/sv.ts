import type { Fault } from "../../record/index.ts";
import type { writeupWords as en } from "./en.ts";

const months = "januari februari mars april maj juni juli augusti september oktober november december".split(
  " ",
);

const uses = [
  "jag skulle aldrig använda det",
  "jag skulle nästan aldrig använda det",
  "jag skulle använda det då och då",
  "jag skulle använda det ofta",
  "jag skulle använda det de flesta veckor",
  "jag skulle använda det varje dag",
];

/** What the basics are for, by the words that the screens keep. */
const roles: ReadonlyMap<string, string> = new Map([
  ["sketch", "att rita med"],
  ["carry", "att rita på"],
  ["erase", "att sudda med"],
]);

const usual = { source: "det vanliga rådet, allmän sed, utan källa", checked: "2026-11-25" };

/** What a value waits for. The engine's faults are in English, but their codes and days are nobody's language. */
function waitsFor({ place, problem }: Fault): string {
  if (place.endsWith("valuedOn")) return "det är inte sagt vilken dags priser som gäller";
  const codes = [...problem.matchAll(/\b[A-Z]{3}\b/g)].map(([code]) => code);
  const [day] = /\d{4}-\d{2}-\d{2}/.exec(problem) ?? [];
  return `det saknas en kurs för ${codes.join(" och ")} den ${day} eller tidigare`;
}

export const writeupWords: typeof en = {
  amount: (text) => text.replace(".", ","),
  month: (period) => {
    const [year = "", month = ""] = period.split("-");
    return `${months[Number(month) - 1] ?? month} ${year}`;
  },
  cellGap: "; ", // a comma would run into those of the amounts

  disclosures: {
    own: {
      short: "Allt fanns hemma.",
      sentence: "Allt som visas var redan mitt; ingen har betalat för det här.",
    },
    bought: {
      short: "Allt har jag köpt själv.",
      sentence: "Jag har själv köpt allt som visas; ingen har betalat för det här.",
    },
    gifted: {
      short: "Med gåvor.",
      sentence: "En del av det som visas har jag fått gratis av tillverkaren eller säljaren.",
    },
    lent: {
      short: "Med lån.",
      sentence: "En del av det som visas har jag fått låna av tillverkaren eller säljaren.",
    },
    sponsored: { short: "Betald reklam.", sentence: "Det här är betald reklam: det är sponsrat." },
    affiliate: {
      short: "Reklamlänkar.",
      sentence: "En del länkar är reklam: jag får provision när du köper genom dem.",
    },
  },

  result: (filled, all) => `${filled} av ${all} från mina egna hyllor.`,
  kitSection: "kitet",
  kit: (name, maker, month) => `Kitet: ${name}, från ${maker}, ${month}.`,
  received: "Jag har fått det här kitet en gång, så samma saker fick inte vara med.",
  prompt: (asked) => `Uppgiften: ${asked}`,
  remade: (from, to) => `Omtag från ${from}${to === null ? "" : ` till ${to}`}, inget köpt för det.`,
  chapters: "Kapitel",
  links: "Länkar",
  tagSection: "taggarna",

  standIns: "Innehållet och ersättarna",
  standInHead: ["I kitet", "Från mina hyllor", "Hur nära", "Varför"],
  mixed: (names) => names.join(" med "),
  nothingClose: "inget på mina hyllor som ligger nära",
  leftOpen: "utelämnad med flit",
  ownPick: "mitt eget val",
  near: (hundredths, verdict) => `${hundredths} av 100, ${verdict}`,
  lastResort: "inget annat dög, så det blev den jag har fått",

  beside: "Vid sidan av kitet",
  gone: "något som inte finns kvar",
  basic: (name, role) => `Grundsak tillagd: ${name}${role ? ` (${roles.get(role) ?? role})` : ""}`,
  shown: (name, why) => `Bara visad, inte använd i verket: ${name}${why ? `. ${why}` : ""}`,
  bent: (rule, why) => `Regel${rule === null ? "" : ` ${rule}`} tänjd${why ? `: ${why}` : ""}`,

  worth: (place, currency) => `Värde i ${place}, ${currency}`,
  together: (list, shop, wanted) =>
    `Innehållet tillsammans: listpris ${list}; butikspris ${shop}; bara det jag skulle använda ${wanted}`,
  unpriced: (names) => `Utan både listpris och butikspris: ${names}`,
  worthHead: [
    "Nivå",
    "ett kit kostar",
    "varav vid gränsen",
    "enligt listpris",
    "enligt butikspris",
    "enligt det jag skulle använda",
  ],
  least: (amount) => `minst ${amount}`,
  pays: "lönar sig",
  doesNotPay: "lönar sig inte",
  hangsOn: (line) => `hänger på ${line}`,
  someLine: "en rad",

  prices: (place, currency) => `Priser i ${place}, ${currency}`,
  priceHead: ["Sak", "listpris", "butikspris"],
  noPrice: "inget pris",
  sum: "Tillsammans",
  found: (place) => `Hur priserna i ${place} hittades`,
  noShopPrice: "Inget butikspris: listpriset får gälla.",

  basis: "Vad siffrorna bygger på",
  pricesAsOf: (day) => `Listpriser och butikspriser per ${day}; priser ändras.`,
  notWorkedOut: (fault) => `Värdet är inte uträknat: ${waitsFor(fault)}`,
  rates: (base, quotes, day) => `1 ${base} = ${quotes.join("; ")} den ${day}`,
  staleRates: "En del av kurserna är mer än en vecka äldre än den dagen.",
  border:
    "Tull, skatt och avgifter vid en gräns är uppskattningar; tullen eller skattemyndigheten i landet dit paketet kommer avgör.",

  verdict: "Mitt omdöme",
  use: (often) => uses[often] ?? "",
  buy: "skulle köpa det",
  notBuy: "skulle inte köpa det",
  replaces: (what) => `det skulle ersätta ${what}`,
  corrections: "Rättelser",
  correction: (at, said, meant) =>
    `${at ? `Vid ${at} sa jag` : "Jag sa"} ${said ?? "något annat"}; jag menade ${meant ?? "något annat"}`,
  questions: "Berätta för mig",

  cautionTitle: "Var försiktig",
  cautions: {
    solvent: {
      line: "Spritbaserat bläck och oljefärg: öppna ett fönster och håll undan öppen eld.",
      ...usual,
    },
    aerosol: {
      line: "Sprej: använd den utomhus eller vid ett öppet fönster, långt från öppen eld, och andas inte in dimman.",
      ...usual,
    },
    dust: {
      line: "Pastell, kol och färgpulver: andas inte in dammet och torka upp det fuktigt; en del pigment är giftiga.",
      ...usual,
    },
    blade: { line: "Knivblad: skär bort från handen, på en skärmatta.", ...usual },
  },
  label: (name, says) => `${name}, etiketten säger: ${says}`,
  defer: "Läs etiketten och tillverkarens säkerhetsdatablad; lokala regler går först.",
  screenColour:
    "En färg på en skärm är ungefärlig: gör ett färgprov på det riktiga papperet innan du litar på den.",

  leftOut: (titles) => `Utelämnat för längdens skull: ${titles.join("; ")}.`,
  restLeftOut: "Resten är utelämnat för längdens skull.",

  reminders: {
    disclosure:
      "Säg hur du fick materialet: köpt, fått, lånat, sponsrat, med reklamlänkar eller ditt eget. Säg det i videon också.",
    chapters:
      "Kapitel behöver minst tre tider, den första 0:00 och var och en minst tio sekunder efter den förra. Till dess är de inte med.",
    tags: "Tre till fem taggar fungerar bäst; fler än 15 kapas.",
  },
};
