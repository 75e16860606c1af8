import type { setWords as en } from "../en/set.ts";

/** Orden för att lägga till en hel uppsättning färger, på svenska. */
export const setWords: typeof en = {
  title: "Lägg till en hel uppsättning färger",
  lead: "Säg en gång vad de alla är, och klistra sedan in färgerna.",
  leadMore:
    "Nummer, namn och hexkoder i valfri ordning, en färg per rad, så som en färgkarta eller en butik räknar upp dem.",
  note: "En färg på en skärm är ungefärlig. Gör ett färgprov på det riktiga pappret innan du litar på den.",
  what: "Vad var och en av dem är",
  whatHint: "som du skulle säga det: gouachetub 15 ml, färgpenna med vax, märkpenna med alkohol",
  understood: (name, facts) => `Förstått som ${[name, facts].filter(Boolean).join(", ")}.`,
  whatMissing: "Säg först vad de är: gouachetub, färgpenna, märkpenna.",
  maker: "Tillverkare",
  line: "Serie",
  colours: "Färgerna",
  coloursHint: "en per rad: 12 mossa #6b7d3a, eller celler ur ett kalkylblad",
  place: "Var de här bor",
  looked: (fresh, isOne) => (isOne ? "1 färg att lägga till" : `${fresh} färger att lägga till`),
  noNumber: "inget nummer",
  number: (code) => `nr ${code}`,
  guessed: "färgen gissad efter namnet",
  noColour: "ingen färg sagd",
  unnamed: "utan namn",
  here: "finns redan i förrådet",
  twice: "är med två gånger i listan",
  takeOut: "ta bort",
  takeOutNamed: (name) => `Ta bort ${name}`,
  verbNone: "Lägg till dem",
  verb: (count, isOne) => (isOne ? "Lägg till den" : `Lägg till de här ${count}`),
  notYet: "Klistra in färgerna först",
  added: (count, isOne) => (isOne ? "Lade till 1 färg i förrådet" : `Lade till ${count} färger i förrådet`),
};
