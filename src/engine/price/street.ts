import { compare } from "../money/index.ts";
import { daysBetween, type Outcome, ok } from "../record/index.ts";
import { type Found, foundOf, newestFirst, type Scene } from "./book.ts";
import { type Chosen, choose, mapDraft, type Option, optionOf } from "./choose.ts";
import { isOwnPack } from "./quantity.ts";
import { draftOf, marketOfFound, quoteFound } from "./quote.ts";
import { shopWords, standInWords } from "./say.ts";
import { choicesOf } from "./settled.ts";
import type { Method, Quote } from "./trace.ts";

/** How many days before or after the day that counts a shop price still speaks for it. */
const shopPriceDays = 90;

type Priced = Readonly<{ found: Found; quote: Quote }>;

/** What shops were seen to ask, or not to have, for the line's own pack near the day that counts. */
const seenInShops = (scene: Scene): readonly Found[] =>
  newestFirst(foundOf(scene.line)).filter(({ evidence }) => {
    const seen = evidence.kind === "shop" || (evidence.kind === "not-sold" && evidence.shop);
    if (!seen || !evidence.date || !isOwnPack(evidence.pack, scene.line.supply)) return false;
    return Math.abs(daysBetween(evidence.date, scene.valuedOn)) <= shopPriceDays;
  });

/** A shop's own word counts once per market; a price without a shop stands for itself. */
const shopKey = (scene: Scene, found: Found): string =>
  JSON.stringify(found.evidence.shop ? [found.evidence.shop, marketOfFound(scene, found)] : [found.index]);

/** Of each shop only the newest word, and of those only what it has in stock. */
function standing(scene: Scene): readonly Found[] {
  const newest = new Map<string, Found>();
  for (const found of seenInShops(scene)) {
    const key = shopKey(scene, found);
    if (!newest.has(key)) newest.set(key, found);
  }
  return [...newest.values()].filter(
    ({ evidence }) => evidence.kind === "shop" && evidence.price && (evidence.inStock ?? true),
  );
}

/** Each price in the market's currency, or the first missing rate. */
function priced(scene: Scene, all: readonly Found[]): Outcome<readonly Priced[]> {
  const done: Priced[] = [];
  for (const found of all) {
    if (!found.evidence.price) continue;
    const quote = quoteFound(scene, found, found.evidence.price);
    if (!quote.ok) return quote;
    done.push({ found, quote: quote.value });
  }
  return ok(done);
}

/** The lowest; of equal ones the newest, then the later in the file, which is the order they come in. */
const lowestOf = (all: readonly Priced[]): Priced | undefined =>
  all.toSorted((a, b) => compare(a.quote.amount, b.quote.amount))[0];

function lowestOption(scene: Scene, method: Method, found: readonly Found[]): Option | null {
  const all = priced(scene, found);
  if (!all.ok) return optionOf(method, all);
  const lowest = lowestOf(all.value);
  if (!lowest) return null;
  const words = shopWords(scene, lowest.quote, lowest.found.evidence.reducedFrom);
  return optionOf(method, ok(draftOf(lowest.quote, method, words)));
}

/** The list estimate standing in for a shop price, and saying so. */
const fromList = (scene: Scene, list: Option): Option =>
  optionOf(
    "list",
    mapDraft(list.draft, (draft) => ({
      ...draft,
      method: "list",
      words: standInWords(scene, draft.words),
      trace: { ...draft.trace, chosen: false, reason: null },
    })),
  );

/** The street estimate of a line in a market, with all that apply beside it. */
export function chooseStreet(scene: Scene, list: Option | null): Chosen {
  const all = standing(scene);
  const isHere = (found: Found): boolean => marketOfFound(scene, found) === scene.market.id;
  const options = [
    lowestOption(scene, "shop", all.filter(isHere)),
    lowestOption(
      scene,
      "converted",
      all.filter((found) => !isHere(found)),
    ),
    list && fromList(scene, list),
  ];
  return choose(
    scene,
    choicesOf(scene, "street"),
    options.filter((option) => option !== null),
  );
}
