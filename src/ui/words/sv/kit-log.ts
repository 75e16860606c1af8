import type { kitLogWords as en } from "../en/kit-log.ts";

/** The words of what is opened while a kit is logged: sources, forms, corrections, a pasted list. In Swedish. */
export const kitLogWords: typeof en = {
  claims: {
    who: "Vem eller vad som säger det",
    when: "När",
    keep: "Behåll det",
    cancel: "Låt det vara",
    change: "ändra",
    valueMissing: "Skriv vad som sägs.",
  },

  settle: {
    title: "Där källorna skiljer sig",
    text: "Välj vad du går på. Allt som har sagts finns kvar.",
    choose: (field) => `${field}: vad jag går på`,
    stands: "står i raden",
    misfit: "kan inte stå så i fältet",
    reason: "Varför",
    reasonHint: "till exempel: avläst på själva saken",
    verb: "Gå på det här",
    notYet: "Välj något av dem först",
    settled: (field, value) => `${field}: gick på ${value}`,
    because: (reason, day) => `${reason}, ${day}`,
    reopen: "öppna igen",
  },

  variants: {
    title: "Skickades i flera former",
    text: "Raden går efter en av dem; de andra finns kvar.",
    none: "Lägg till en form om några fick en annan färg eller sort.",
    follow: "gå efter den här",
    remove: "ta ut",
    write: "En annan form, så som du skulle säga den",
    verb: "Lägg till formen",
    notYet: "Skriv först vad det är",
    reads: (name, facts) => `Tolkat: ${name}${facts ? `, ${facts}` : ""}`,
  },

  errata: {
    title: "Vad tillverkaren har rättat",
    none: "Ingen rättelse antecknad.",
    add: "Anteckna en rättelse",
    about: (names) => `Om ${names}`,
    whole: "Om hela kitet",
    date: "När den kom",
    says: "Vad den säger",
    lines: "Rader den gäller",
    keep: "Behåll den",
    cancel: "Låt det vara",
    change: "ändra",
    remove: "ta bort",
    missing: "Skriv vad tillverkaren rättade.",
  },

  pasted: {
    change: "rätta",
    done: "klar",
    label: (number) => `Rad ${number} i listan`,
    price: (price) => `Behåll ${price} som ett hittat pris`,
    priceInName: "Behåll priset som ett hittat pris, inte i namnet",
    currency: "Valuta",
    pricesAre: "Priset är",
    kinds: { card: "vad kortet säger", shop: "ett butikspris", list: "ett listpris" },
  },

  guess: {
    title: "En färg som är gissad efter namnet",
    text: (name, hex) =>
      `Ingen har angett färgen på ”${name}”. Den ritas som ${hex}, det som ett sådant namn mest står för.`,
    spread: (units) =>
      `Saken själv kan ligga upp till ${units} ifrån, där 1 nätt och jämnt syns sida vid sida och 20 är en annan färg. Hur säkert det är: föga.`,
    better: "En bättre färg tar dess plats: skriv dess kod ovanför, eller plocka den ur ett foto.",
  },

  photo: {
    pick: "Plocka den ur ett foto",
    choose: "Välj ett foto",
    unreadable: "Det här är ingen bild som webbläsaren kan läsa.",
    large: "Bilden är för stor. Välj en under 60 megapixel.",
    hint: "Peka på färgen. Med tangenter: pilarna flyttar ringen, Enter tar det som är i den.",
    whiteHint: "Peka nu på något vitt i samma ljus: papper, eller kortet.",
    asWhite: "Peka på vitt",
    asColour: "Peka på färgen",
    canvas: "Fotot att peka i",
    found: (hex, spread) => `${hex}; i ringen varierar den med ${spread}`,
    noWhite: "Utan något vitt finns fotots ljus med i färgen.",
    withWhite: "Ljuset är borträknat med det vita du pekade på.",
    clipped: "Det vita är för ljust för att visa sin egen färg, så det räknades inte.",
    take: "Använd den här färgen",
    close: "Stäng fotot",
    gone: "Fotot sparas inte.",
  },

  copy: {
    from: "Utgå från ett tidigare kit",
    none: "från ingenting",
    prices: "Räkna med dess priser som vad tidigare kort sa",
    told: (lead, kit, withPrices) =>
      `${lead} Allt är kopierat från ${kit}, ${withPrices ? "med priserna som vad tidigare kort sa" : "utan priser"}. Ta ut det som inte låg i det här.`,
    source: (kit) => `som i ${kit}`,
  },
};
