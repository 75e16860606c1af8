import { deltaE2000, type Lab, parseColour } from "../../../engine/colour/index.ts";
import type { Family } from "../../../engine/supply/index.ts";
import { foldWords } from "../../words/fold-words.ts";
import { askedGtin } from "./asked-gtin.ts";
import { type Known, placeOf, type State, stateOf } from "./known.ts";

/** What is asked of the stash: words or a colour typed, and what was ticked. Null: no matter. */
export type Asked = Readonly<{
  text: string;
  kind: Family | null;
  place: string | null;
  state: State | null;
}>;

/** The ids that fit, and how far each is from the colour asked for, where one is. */
export type Found = Readonly<{
  ids: ReadonlySet<string>;
  /** ΔE00 to the colour that was typed; null when none was. */
  apart: ReadonlyMap<string, number> | null;
  /** Whether anything was asked at all. */
  asked: boolean;
}>;

/** ΔE00 up to which a colour counts as close to the one typed: to the end of "kindred". The limit is ours. */
const closeUpTo = 10;

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

const ticked = ({ item }: Known, { kind, place, state }: Asked): boolean =>
  (kind === null || item.supply.family === kind) &&
  (place === null || placeOf(item) === place) &&
  (state === null || stateOf(item) === state);

/** Which of the stash fits what is asked: every word is in it, and its colour is close to the one typed. */
export function findIn(stash: readonly Known[], asked: Asked): Found {
  const { words, colour } = readSearch(asked.text);
  const fitting = stash.filter(
    (known) => ticked(known, asked) && words.every((word) => known.findable.includes(word)),
  );
  const isAsked =
    words.length > 0 || colour !== null || [asked.kind, asked.place, asked.state].some((one) => one !== null);
  if (!colour) return { ids: new Set(fitting.map(({ item }) => item.id)), apart: null, asked: isAsked };
  const apart = new Map(
    fitting
      .flatMap((known) =>
        known.colour ? [[known.item.id, deltaE2000(colour, known.colour.lab)] as const] : [],
      )
      .filter(([, deltaE]) => deltaE <= closeUpTo)
      .toSorted(([, a], [, b]) => a - b),
  );
  return { ids: new Set(apart.keys()), apart, asked: true };
}
