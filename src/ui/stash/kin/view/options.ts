import { kinWords as words } from "../../../words/kin.ts";

const kinds = ["twin", "same-colour", "refill-fits"] as const;
const sures = ["known", "told", "believed"] as const;

export const kindOptions = kinds.map((value) => ({ value, label: words.kinds[value] }));

export const sureOptions = [
  { value: "" as const, label: words.notSaid },
  ...sures.map((value) => ({ value, label: words.sures[value] })),
];

export const byOptions = [
  { value: "code" as const, label: words.pairings.code },
  { value: "name" as const, label: words.pairings.name },
];
