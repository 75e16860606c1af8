import type { Term } from "../words/terms.ts";
import { hrefOf, type KitTab, type RemakeTab, type Route } from "./route.ts";

const kitTerms: Readonly<Record<KitTab, readonly Term[]>> = {
  contents: ["kit", "sources", "asOf", "tier", "received", "wanted"],
  prices: ["listPrice", "shopPrice", "found", "goWith", "earlier", "market"],
  worth: ["pays", "hangs", "listPrice", "shopPrice", "wanted", "tier", "border", "breakEven"],
};

const remakeTerms: Readonly<Record<RemakeTab, readonly Term[]>> = {
  "stand-ins": ["standIn", "gap", "near", "apart", "palette", "steps", "twin", "pinch", "work", "lastResort"],
  bench: ["prompt", "basics", "shown", "bent"],
  verdict: ["verdict", "remake"],
  "write-up": ["writeup", "pays", "hangs"],
};

const placeTerms: Readonly<Partial<Record<Route["name"], readonly Term[]>>> = {
  desk: ["remake", "standIn", "gap", "kit", "stash"],
  kits: ["kit", "gap", "near", "remake"],
  stash: ["stash", "apart"],
  "stash-item": ["apart", "twin", "remake"],
  remakes: ["remake", "standIn", "kit"],
  markets: ["market", "rates", "tier", "border", "asOf"],
  "keep-safe": ["notebook", "copy", "setAside"],
};

/** The words of ours that are used at an address, to be asked there. */
export function termsOf(route: Route): readonly Term[] {
  if (route.name === "kit") return kitTerms[route.tab];
  if (route.name === "remake") return remakeTerms[route.tab];
  return placeTerms[route.name] ?? [];
}

/** Where a word of ours stands among all of them. */
export const wordsAddress = (term: Term): string => `${hrefOf({ name: "words" })}?of=${term}`;
