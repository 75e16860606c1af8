import type { findWords as en } from "../en/find.ts";

/** Ord för att hitta och välja i Förrådet. Antal kommer in som de skrivs. */
export const findWords: typeof en = {
  maker: "Tillverkare",
  line: "Serie",
  tag: "Etikett",
  yes: "ja",
  no: "nej",
  moreFilters: "Mer att välja bland",
  fewerFilters: "Färre",

  sort: "Ordnat efter",
  orders: { near: "närhet", name: "namn", place: "ställe", newest: "senast tillagt" },

  closeTo: "Nära den här",
  nearTo: (count, name) => `${count} närmast ${name}`,
  notNear: "Alla färger igen",
  namedAnd: (named, count) => `${named} heter så, ${count} har den färgen`,
  leftAside: (found, words) => `${found}; inget heter ”${words}”`,

  choose: "Välj flera",
  chooseEnd: "Klar med valet",
  chooseOne: (name) => `Välj ${name}`,
  chosen: (count) => `${count} valda`,
  hidden: (count) => `(${count} utanför träffarna)`,
  chosenNone: "Kryssa i det du vill ändra på en gång. Med Skift tar du allt däremellan.",
  all: (count) => `Välj alla ${count} träffar`,
  none: "Välj inga",
  change: "Ändra …",
  remove: "Ta bort …",

  tidy: "Håll det i ordning",
};
