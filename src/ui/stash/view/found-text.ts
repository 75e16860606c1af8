import { findWords } from "../../words/find.ts";
import { format } from "../../words/index.ts";
import { stashWords as words } from "../../words/stash.ts";
import type { Found } from "./find.ts";

function plainText({ ids, apart, named }: Found, nearName: string | null): string {
  const count = format.count(ids.size);
  if (named) return findWords.namedAnd(format.count(named.size), format.count(ids.size - named.size));
  if (apart && nearName !== null) return findWords.nearTo(count, nearName);
  return apart ? words.foundNear(count) : words.found(count, ids.size === 1);
}

/** How much was found, and what of the search was left aside. `nearName`: of the thing whose colour is asked for. */
export function foundText(found: Found, nearName: string | null): string {
  const text = plainText(found, nearName);
  return found.leftAside.length > 0 ? findWords.leftAside(text, found.leftAside.join(" ")) : text;
}
