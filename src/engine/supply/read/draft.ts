import type { Family } from "../traits.ts";
import { figuresAside, measuresAside, runOf } from "./aside.ts";
import { readColourName, readHex } from "./colour.ts";
import { familyByMeasure, readMeasures } from "./measures.ts";
import { literal, matches, overlaps, type Span, whole } from "./phrase.ts";
import { type Found, found } from "./piece.ts";
import { readPounds } from "./pounds.ts";
import { readPrice } from "./price.ts";
import { readQuantity } from "./quantity.ts";
import { type Run, restOf, trimsFor } from "./rest.ts";
import { asColoured, headPiece, type Named, readAgain, readHead, readTraits } from "./traits.ts";
import { type Voice, voices } from "./voice.ts";

/**
 * Names that the caller knows and a table of words cannot: the makers and lines of the workbook. `prices`: whether a
 * price is looked for; without it one stays in the name like all that is not understood.
 */
export type KnownNames = Readonly<{
  makers?: readonly string[];
  lines?: readonly string[];
  prices?: boolean;
}>;

const longestFirst = (a: string, b: string) => b.length - a.length || (a < b ? -1 : 1);

function readKnown(
  text: string,
  names: readonly string[],
  field: string,
  said: string,
  { says }: Voice,
  taken: readonly Found[],
): readonly Found[] {
  for (const name of names.filter((word) => word.trim() !== "").toSorted(longestFirst)) {
    const pattern = whole(name.trim().split(/\s+/).map(literal).join("\\s+"));
    const [match] = matches(text, pattern, taken);
    if (match) return [found(match, field, name, says.about(said, name))];
  }
  return [];
}

function readNames(text: string, known: KnownNames, voice: Voice): readonly Found[] {
  const { maker, line } = voice.says;
  const makers = readKnown(text, known.makers ?? [], "maker", maker, voice, []);
  return [...makers, ...readKnown(text, known.lines ?? [], "line", line, voice, makers)];
}

/** A line taken apart. */
export type Draft = Readonly<{
  family: Family;
  head: Named | null;
  pieces: readonly Found[];
  /** Figures that nothing in the thing takes: prices, sizes by number, measures of another kind. */
  aside: readonly Span[];
}>;

type Step = (taken: readonly Found[]) => readonly (Found | null)[];

const spansFree = (spans: readonly Span[], taken: readonly Span[]): readonly Span[] =>
  spans.filter((span) => !taken.some((piece) => overlaps(piece, span)));

/** Reads a line piece by piece, surest first: what one has read, the next leaves alone. */
export function readPieces(text: string, known: KnownNames, voice: Voice): Draft {
  const { words, says } = voice;
  const names = readNames(text, known, voice);
  const price = known.prices ? readPrice(text, says, names) : null;
  const figures = spansFree(figuresAside(text, voice), price ? [...names, price] : names);
  // A line's own name may say the kind ("Strand gouache"): it tells the family, and stays one piece.
  const makers = names.filter(({ field }) => field === "maker");
  const hit = asColoured(text, readHead(text, words, makers));
  const head = hit && headPiece(hit, says);
  const family = hit?.kind.family ?? familyByMeasure(text, says, figures) ?? "other";
  const steps: readonly Step[] = [
    (taken) => [head && !taken.some((name) => overlaps(name, head)) ? head : null, readHex(text)],
    (taken) => readMeasures(text, family, says, [...taken, ...figures]),
    (taken) => readTraits(text, family, voice, taken, figures),
    (taken) => (family === "paper" ? readPounds(text, says, taken, figures) : []),
  ];
  const pieces = price ? [...names, price] : [...names];
  const take = (step: Step) => pieces.push(...step(pieces).filter((piece) => piece !== null));
  steps.forEach(take);
  const aside = [...figures, ...measuresAside(text, [...pieces, ...figures])];
  take((taken) => [readQuantity(text, voice, taken, aside)]);
  take((taken) => {
    const runs = restOf(text, [...taken, ...aside], trims[voice.language]);
    return [readColourName(runs, family, hit ? hit.match.index : 0, voice)];
  });
  take((taken) => readAgain(text, family, voice, taken, aside));
  return { family, head: hit, pieces: pieces.toSorted((a, b) => a.start - b.start), aside };
}

const trims = { en: trimsFor(voices.en.words), sv: trimsFor(voices.sv.words) };

/** What is in no piece: what was set aside as it stands, the rest without the small words around it. */
export const leftIn = (text: string, { pieces, aside }: Draft, { language }: Voice): readonly Run[] =>
  [
    ...aside.map((span) => runOf(text, span)),
    ...restOf(text, [...pieces, ...aside], trims[language]),
  ].toSorted((a, b) => a.start - b.start);
