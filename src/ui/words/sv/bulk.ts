import type { bulkWords as en } from "../en/bulk.ts";

const things = (count: string): string => (count === "1" ? "1 sak" : `${count} saker`);

/** Ord för att ändra flera saker i Förrådet på en gång. Antal kommer in som de skrivs. */
export const bulkWords: typeof en = {
  changeTitle: (count) => `Ändra ${things(count)}`,
  changeText: "Det du fyller i här blir lika för alla. Det du låter vara står kvar som det är.",
  changeAct: (count) => `Ändra ${things(count)}`,
  changeThem: "Ändra dem",
  nothingYet: "Fyll först i något som ska ändras",
  leave: "Låt dem vara",
  asIs: "som det är",
  differ: "skiljer sig åt nu",
  differing: (label) => `${label} (skiljer sig åt nu)`,
  paidEach: "för var och en",
  tagsOn: "Etiketter att sätta på alla",
  tagsOff: "Etiketter att ta bort",

  removeTitle: (count) => `Ta bort ${things(count)} ur förrådet?`,
  removeAct: (count) => (count === "1" ? "Ta bort den" : `Ta bort alla ${count}`),
  keep: "Behåll dem",
  andMore: (count) => `och ${count} till`,
  inRemakes: (count) =>
    count === 1
      ? "De används i 1 omtag, som blir utan dem."
      : `De används i ${count} omtag, som blir utan dem.`,
  twinsOf: (count) =>
    count === 1
      ? "1 annan sak är deras tvilling och blir kvar."
      : `${count} andra saker är deras tvillingar och blir kvar.`,
  canUndo: "Du kan ångra det här, och allt ställs undan som det var.",
};
