import type { printWords as en } from "../en/print.ts";

const things = (count: string, isOne: boolean): string => (isOne ? "1 sak" : `${count} saker`);
const sheets = (count: string, isOne: boolean): string => (isOne ? "1 blad" : `${count} blad`);

/** Ord för det som skrivs ut av förrådet. Antal kommer in som de skrivs. */
export const printWords: typeof en = {
  listAct: "Skriv ut förrådets lista",
  listAlso: "papper utskrift inventera inventering bocka av hyllan",
  chartAct: "Skriv ut en färgkarta",
  chartAlso: "papper utskrift färgprover måla i för hand tomma rutor",

  tabs: "Vad som skrivs ut",
  print: "Skriv ut",
  which: "Vad som är med",
  all: (count, isOne) => (isOne ? "allt: 1 sak" : `allt: ${things(count, isOne)}`),
  found: (count, isOne) => `det som sökningen hittade: ${things(count, isOne)}`,
  chosen: (count, isOne) => `det som du har valt: ${things(count, isOne)}`,
  sendOn: "Skriv ut eller spara dem",
  blank: "tomma rutor",
  nothing: "Inget i förrådet passar på det här.",
  nothingYet: "Inget i förrådet än.",
  more: (count, isOne) =>
    isOne ? "1 till är med på bladet när det skrivs ut." : `${count} till är med på bladen när de skrivs ut.`,
  moreSheets: (count, isOne) => `Och ${sheets(count, isOne)} till som det här när det skrivs ut.`,

  list: {
    tab: "Lista",
    title: "Förrådets lista",
    lead: "En ruta att bocka av för varje sak som ligger på sin plats.",
    by: "I ordning efter",
    place: "var det ligger",
    maker: "tillverkare och serie",
    without: { place: "Inget ställe antecknat", maker: "Okänd tillverkare" },
    sum: (count, isOne) => `${things(count, isOne)}.`,
    code: "Nummer",
    where: { place: "Tillverkare och serie", maker: "Var" },
    have: "Har",
    state: "Skick",
  },

  chart: {
    tab: "Färgkarta",
    title: "Färgkarta",
    lead: "Rutor att måla i för hand, var och en med namn, nummer och plats.",
    leadMore: "Ett foto av den färdiga kartan ger varje sak dess rätta färg.",
    note: "Skriv ut i verklig storlek, eller 100 %. Båda linjalerna på bladet ska mäta 100 mm.",
    order: "I ordning efter",
    orders: { code: "tillverkare och nummer", name: "namn", hue: "kulör" },
    columns: "Rutor i en rad",
    columnsOf: (count, width, height) => `${count}, var och en ${width} × ${height} mm`,
    leftOut: (count, isOne) =>
      isOne
        ? "1 sak är inte med, eftersom den inte ger någon färg på papper."
        : `${count} saker är inte med, eftersom de inte ger någon färg på papper.`,
    none: "Inget här ger någon färg på papper.",
    grid: (rows, columns, width, height) =>
      `${rows} rader × ${columns} kolumner, rutor ${width} × ${height} mm, mycket papper mellan`,
    sheetOf: (sheet, all) => `Blad ${sheet} av ${all}`,
    picture: (sheet, all, rows, columns) =>
      `Blad ${sheet} av ${all}: ${rows} rader med ${columns} rutor att måla i`,
    ruler: "100 mm när det skrivs ut i verklig storlek",
  },
};
