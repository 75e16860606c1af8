import type { saveWords as en } from "../en/save.ts";

const things = (count: string, isOne: boolean): string => (isOne ? "1 sak" : `${count} saker`);

/** Orden för att spara förrådet som en lista, på svenska. */
export const saveWords: typeof en = {
  onwards: "Ta med dig det",
  save: "Spara listan",
  print: "Skriv ut den",

  title: "Spara listan",
  lead: "Det du har, som en fil för kalkylprogram.",
  leadMore:
    "När den hämtas in igen är varje sak precis som när den sparades, och det som redan finns lämnas i fred.",
  note: "På den här sidans språk. Den läses tillbaka på båda.",
  kinds: "Som fil",
  kind: { xlsx: "Spara som XLSX", ods: "Spara som ODS", csv: "Spara som CSV" },
  kindText: {
    xlsx: "det som de flesta kalkylprogram öppnar; priser är tal, och dagar är dagar",
    ods: "samma sak i kontorsprogrammens öppna format",
    csv: "ren text som alla program läser; en del tar en kod som 007 för talet 7",
  },
  nothing: "Det finns inget att spara",
  writing: "Skriver listan",
  saved: (name, count, isOne) => `Sparade ${name}: ${things(count, isOne)}.`,
  failed: "Listan gick inte att skriva: enheten har för lite minne. Spara en del av den.",

  held: "Vad som är med",
  looking: "Ser efter vad som är med",
  whole: "Allt som är noterat om de här sakerna.",
  pictures: (count, isOne) =>
    isOne ? "Bilderna på 1 sak är inte med." : `Bilderna på ${count} saker är inte med.`,
  others: (count, isOne) =>
    isOne
      ? "1 sak har något noterat som ingen kolumn rymmer."
      : `${count} saker har något noterat som ingen kolumn rymmer.`,
  copy: "En kopia av allt har alltihop.",
  toCopy: "Spara en kopia av allt",

  paper: "På papper",

  apart: "Förrådet som en lista",
  apartText:
    "En fil för kalkylprogram, eller ett blad att gå igenom hyllan med. Den kommer tillbaka som den sparades.",

  fileName: (day, kind) => `forrad-${day}.${kind}`,
  sheet: "Förråd",
};
