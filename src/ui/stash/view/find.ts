import { deltaE2000, type Lab, parseColour } from "../../../engine/colour/index.ts";
import type { ColourPhrase } from "../../../engine/supply/index.ts";
import { foldWords } from "../../words/fold-words.ts";
import type { Asked, ReadPhrase } from "./asked.ts";
import { askedGtin } from "./asked-gtin.ts";
import { type Known, placeOf, stateOf } from "./known.ts";
import { traitValues } from "./traits.ts";

/** The ids that fit, and how far each is from the colour asked for, where one is. */
export type Found = Readonly<{
  ids: ReadonlySet<string>;
  /** ΔE00 to the colour that was typed, named or is another thing's; null when none was. */
  apart: ReadonlyMap<string, number> | null;
  /** Whether anything was asked at all. */
  asked: boolean;
  /** Those found by their words, where others were found by the colour that the words name; else null. */
  named: ReadonlySet<string> | null;
  /** Words that nothing goes by, left aside so that the colour among them could still be found. */
  leftAside: readonly string[];
}>;

/** ΔE00 up to which a colour counts as close to the one typed: to the end of "kindred". The limit is ours. */
const closeUpTo = 10;

/** Of what is close to another thing there are always so many, however far they are. */
const closestAtLeast = 12;

// Without "#" six letters may be a word ("facade"): one of them has to be a digit.
const colourToken = /#(?:[0-9a-f]{6}|[0-9a-f]{3})(?![0-9a-z])|\b(?=[a-f]*\d)[0-9a-f]{6}\b|lab\([^)]*\)/i;

type Search = Readonly<{ words: readonly string[]; colour: Lab | null }>;

/** A search text taken apart: a colour as hex or lab(…), and the words around it. */
export function readSearch(text: string): Search {
  const gtin = askedGtin(text);
  if (gtin) return { words: [gtin], colour: null };
  const token = colourToken.exec(text)?.[0];
  const parsed = token === undefined ? null : parseColour(token);
  const rest = parsed?.ok && token !== undefined ? text.replace(token, " ") : text;
  const folded = foldWords(rest);
  return { words: folded === "" ? [] : folded.split(" "), colour: parsed?.ok ? parsed.value : null };
}

const isTicked = ({ item }: Known, { kind, place, state, tag, maker, line, traits }: Asked): boolean =>
  (kind === null || item.supply.family === kind) &&
  (place === null || placeOf(item) === place) &&
  (state === null || stateOf(item) === state) &&
  (tag === null || (item.tags ?? []).includes(tag)) &&
  (maker === null || (item.supply.maker ?? "") === maker) &&
  (line === null || (item.supply.line ?? "") === line) &&
  traits.every(({ trait, value }) => traitValues(item.supply, trait).includes(value));

const isAnyTicked = ({ kind, place, state, tag, maker, line, traits }: Asked): boolean =>
  traits.length > 0 || [kind, place, state, tag, maker, line].some((one) => one !== null);

const idsOf = (stash: readonly Known[]): ReadonlySet<string> => new Set(stash.map(({ item }) => item.id));

const called = (words: readonly string[]) => (known: Known) =>
  words.every((word) => known.findable.includes(word));

type Apart = readonly (readonly [id: string, deltaE: number])[];

/** How far each is from a colour, nearest first; of equals by id. */
const apartFrom = (colour: Lab, stash: readonly Known[]): Apart =>
  stash
    .flatMap((known) =>
      known.colour ? [[known.item.id, deltaE2000(colour, known.colour.lab)] as const] : [],
    )
    .toSorted(([a, x], [b, y]) => x - y || (a < b ? -1 : 1));

/** What words find where some of them name a colour: what is called so, and what is of that colour. */
function byPhrase(
  stash: readonly Known[],
  named: readonly Known[],
  words: readonly string[],
  phrase: ColourPhrase,
) {
  const others = words.filter((word) => !phrase.words.includes(word));
  const isNamed = new Set(named);
  const isOf = (some: readonly string[]) => (known: Known) =>
    isNamed.has(known) || (known.colour !== null && called(some)(known) && phrase.fits(known.colour.lab));
  const whole = stash.filter(isOf(others));
  return whole.length > 0 || others.length === 0
    ? { fitting: whole, leftAside: [] }
    : { fitting: stash.filter(isOf([])), leftAside: others };
}

function inWords(stash: readonly Known[], words: readonly string[], phrase: ColourPhrase | null): Found {
  const named = stash.filter(called(words));
  if (!phrase) return { ids: idsOf(named), apart: null, asked: true, named: null, leftAside: [] };
  const { fitting, leftAside } = byPhrase(stash, named, words, phrase);
  const apart = phrase.isOne ? new Map(apartFrom(phrase.lab, fitting)) : null;
  const isMore = fitting.length > named.length;
  return { ids: idsOf(fitting), apart, asked: true, named: isMore ? idsOf(named) : null, leftAside };
}

function nearTo(colour: Lab, stash: readonly Known[], atLeast: number): Found {
  const apart = apartFrom(colour, stash).filter(
    ([, deltaE], index) => deltaE <= closeUpTo || index < atLeast,
  );
  return {
    ids: new Set(apart.map(([id]) => id)),
    apart: new Map(apart),
    asked: true,
    named: null,
    leftAside: [],
  };
}

/**
 * Which of the stash fits what is asked: every word is in it or names its colour, and its colour is close to the
 * one typed or to that of another thing.
 * @param readPhrase reads colour words; without it words are looked for as they are
 */
export function findIn(stash: readonly Known[], asked: Asked, readPhrase: ReadPhrase | null = null): Found {
  const { words, colour } = readSearch(asked.text);
  const like = asked.near === null ? null : stash.find(({ item }) => item.id === asked.near)?.colour;
  const ticked = isAnyTicked(asked) ? stash.filter((known) => isTicked(known, asked)) : stash;
  const wanted = colour ?? like?.lab ?? null;
  if (wanted) return nearTo(wanted, ticked.filter(called(words)), colour ? 0 : closestAtLeast);
  if (words.length > 0) return inWords(ticked, words, readPhrase?.(words.join(" ")) ?? null);
  return {
    ids: idsOf(ticked),
    apart: null,
    asked: isAnyTicked(asked),
    named: null,
    leftAside: [],
  };
}
