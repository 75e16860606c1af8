import type { Money } from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import type { Found, Scene } from "./book.ts";
import { type Chosen, choose, type Option, optionOf, settle } from "./choose.ts";
import { ofKind, ownPack } from "./found.ts";
import { precedentsOption } from "./precedents.ts";
import { draftOf, quoteFound } from "./quote.ts";
import { cardWords, guessWords, listWords, rangeWords } from "./say.ts";
import { scaledOf } from "./scaled.ts";
import { choicesOf } from "./settled.ts";
import type { Draft, Method, Quote, Source } from "./trace.ts";

/** The option of one price found, or null where there is none. */
function oneOption(
  scene: Scene,
  method: Method,
  found: Found | undefined,
  words: (quote: Quote) => string,
): Option | null {
  if (!found?.evidence.price) return null;
  const quote = quoteFound(scene, found, found.evidence.price);
  return optionOf(method, quote.ok ? ok(draftOf(quote.value, method, words(quote.value))) : quote);
}

const inMarket =
  (scene: Scene) =>
  ({ evidence }: Found): boolean =>
    evidence.market === scene.market.id;

function listOption(scene: Scene): Option | null {
  const found = ownPack(scene, ofKind(scene, "list")).find(inMarket(scene));
  return oneOption(scene, "list", found, (quote) => listWords(scene, quote));
}

/** List prices of other markets; one found without a market counts as another's. */
function convertedOption(scene: Scene): Option | null {
  const found = ownPack(scene, ofKind(scene, "list")).find((other) => !inMarket(scene)(other));
  return oneOption(scene, "converted", found, (quote) => listWords(scene, quote));
}

function cardOption(scene: Scene): Option | null {
  const [found] = ownPack(scene, ofKind(scene, "card"));
  return oneOption(scene, "card", found, (quote) => cardWords(scene, quote));
}

/** A guess's `low` or `high` as typed; where it has none, the guess itself. */
const edge = (scene: Scene, found: Found, money: Money | null | undefined, likely: Quote): Outcome<Quote> =>
  money ? quoteFound(scene, found, money) : ok(likely);

/** The guess, and its edges where those are in a currency of their own. */
const guessSources = (quotes: readonly Quote[]): readonly Source[] =>
  quotes
    .map(({ source }) => source)
    .filter((source, at, all) => all.findIndex((other) => sameCurrency(other, source)) === at);

const sameCurrency = (a: Source, b: Source): boolean => a.quoted.currency === b.quoted.currency;

function guessDraft(scene: Scene, found: Found, quote: Quote): Outcome<Draft> {
  const low = edge(scene, found, found.evidence.low, quote);
  if (!low.ok) return low;
  const high = edge(scene, found, found.evidence.high, quote);
  if (!high.ok) return high;
  const range = rangeWords(scene, low.value.amount, high.value.amount);
  const draft = draftOf(quote, "guess", guessWords(scene, quote) + range);
  const trace = { ...draft.trace, sources: guessSources([quote, low.value, high.value]) };
  return ok({ ...draft, low: low.value.amount, high: high.value.amount, trace });
}

function guessOption(scene: Scene): Option | null {
  const [found] = ofKind(scene, "guess");
  if (!found?.evidence.price) return null;
  const quote = quoteFound(scene, found, found.evidence.price);
  return optionOf("guess", quote.ok ? guessDraft(scene, found, quote.value) : quote);
}

/** Every way to a list figure that applies, in order of trust. */
function listOptions(scene: Scene): readonly Option[] {
  const scaled = scaledOf(scene);
  const precedents = precedentsOption(scene, (earlier, choice) =>
    settle(earlier, choice, () => listOptions(earlier)),
  );
  const other = scaled?.option ?? null;
  const middle = scaled?.beforePrecedents ? [other, precedents] : [precedents, other];
  const all = [listOption(scene), convertedOption(scene), cardOption(scene), ...middle, guessOption(scene)];
  return all.filter((option) => option !== null);
}

/** The list estimate of a line in a market, with all that apply beside it. */
export const chooseList = (scene: Scene): Chosen =>
  choose(scene, choicesOf(scene, "list"), listOptions(scene));
