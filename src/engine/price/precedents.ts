import { compare, dividedBy, plus } from "../money/index.ts";
import { type Outcome, ok } from "../record/index.ts";
import { type Choice, type Found, foundOf, newestFirst, reference, type Scene } from "./book.ts";
import { type Option, optionOf } from "./choose.ts";
import { ratioOf } from "./quantity.ts";
import { foundPlace, quoteFound } from "./quote.ts";
import { precedentWords } from "./say.ts";
import { choicesAnywhere } from "./settled.ts";
import type { Draft, Quote } from "./trace.ts";

/** What a settled entry of an earlier line comes to; handed in, as it may rest on precedents in turn. */
export type SettledBy = (scene: Scene, choice: Choice) => Option | undefined;

/** The scene of the line that a precedent names; null where there is none, or it would go in a circle. */
function earlierScene(scene: Scene, found: Found): Scene | null {
  const [kitId, lineId] = (found.evidence.line ?? "").split("/");
  const kit = (scene.book.kits ?? []).find((other) => other.id === kitId);
  const line = (kit?.lines ?? []).find((other) => other.id === lineId);
  if (!kit || !line || scene.path.includes(reference(kit, line))) return null;
  return {
    ...scene,
    kit,
    line,
    place: foundPlace(scene, found),
    path: [...scene.path, reference(kit, line)],
  };
}

const quoteOfDraft = (draft: Draft): Quote | null => {
  const [source] = draft.trace.sources;
  return source ? { amount: draft.likely, source } : null;
};

/** The settled list price of an earlier line, for this market's buyer; null where nothing is settled. */
function settledQuote(scene: Scene, settledBy: SettledBy): Outcome<Quote | null> {
  for (const choice of choicesAnywhere(scene)) {
    const option = settledBy(scene, choice);
    if (option) return option.draft.ok ? ok(quoteOfDraft(option.draft.value)) : option.draft;
  }
  return ok(null);
}

/** The newest list price of an earlier line, brought to that line's own quantity. */
function newestListQuote(scene: Scene): Outcome<Quote | null> {
  const newest = newestFirst(foundOf(scene.line)).find(
    ({ evidence }) => evidence.kind === "list" && ratioOf(evidence.pack, scene.line.supply),
  );
  return newest?.evidence.price ? quoteFound(scene, newest, newest.evidence.price) : ok(null);
}

/** What an earlier line says: its settled list price, else its newest one. */
function tell(scene: Scene, settledBy: SettledBy): Outcome<Quote | null> {
  const settled = settledQuote(scene, settledBy);
  return settled.ok && !settled.value ? newestListQuote(scene) : settled;
}

/** `tell`, once per line. */
function toldBy(scene: Scene, settledBy: SettledBy): Outcome<Quote | null> {
  const key = reference(scene.kit, scene.line);
  const said = scene.told.get(key) ?? tell(scene, settledBy);
  scene.told.set(key, said);
  return said;
}

/** What one precedent says; a price of its own counts where the line it names says nothing. */
function precedentQuote(scene: Scene, found: Found, settledBy: SettledBy): Outcome<Quote | null> {
  const earlier = earlierScene(scene, found);
  const said = earlier ? toldBy(earlier, settledBy) : ok(null);
  if (!said.ok || said.value) return said;
  return found.evidence.price ? quoteFound(scene, found, found.evidence.price) : ok(null);
}

/** Low and high are the least and the greatest; likely is halfway between, rounded when it is printed. */
function draftFrom(scene: Scene, quotes: readonly [Quote, ...Quote[]]): Draft {
  const sorted = quotes.map((quote) => quote.amount).toSorted(compare);
  const low = sorted[0] ?? quotes[0].amount;
  const high = sorted.at(-1) ?? low;
  return {
    likely: dividedBy(plus(low, high), 2),
    low,
    high,
    method: "precedents",
    words: precedentWords(scene, quotes.length, low, high),
    trace: { chosen: false, reason: null, sources: quotes.map((quote) => quote.source) },
  };
}

/** What earlier kits' lines say of the price, or null where none says anything. */
export function precedentsOption(scene: Scene, settledBy: SettledBy): Option | null {
  const named = foundOf(scene.line).filter(({ evidence }) => evidence.kind === "precedent");
  const quotes: Quote[] = [];
  for (const found of named) {
    const quote = precedentQuote(scene, found, settledBy);
    if (!quote.ok) return optionOf("precedents", quote);
    if (quote.value) quotes.push(quote.value);
  }
  const [first, ...rest] = quotes;
  return first ? optionOf("precedents", ok(draftFrom(scene, [first, ...rest]))) : null;
}
