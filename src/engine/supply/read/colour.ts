import type { Family } from "../traits.ts";
import { plainColour } from "./colour-words.ts";
import { guessedHex } from "./guessed.ts";
import type { Found } from "./piece.ts";
import type { Run } from "./rest.ts";
import type { Voice } from "./voice.ts";

const coloured: readonly Family[] = ["marker", "liner", "colour-pencil", "paint", "ink", "pastel"];

const mayHaveColour = (family: Family): boolean =>
  hasColour(family) || family === "paper" || family === "graphite";

/** Whether things of this family are told apart by their colour. */
export const hasColour = (family: Family): boolean => coloured.includes(family);

// Three figures with no letter ("#199") are as likely a number on a pen.
const hexPattern = /#(?:[0-9a-f]{6}|(?!\d{3}(?!\p{N}))[0-9a-f]{3})(?![\p{L}\p{N}])/iu;

/** A hex colour written out, `#6b7d3a` or `#673`. */
export function readHex(text: string): Found | null {
  const match = hexPattern.exec(text);
  if (!match) return null;
  const digits = match[0].slice(1).toLowerCase();
  const hex = `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join("") : digits}`;
  return {
    start: match.index,
    end: match.index + match[0].length,
    text: match[0],
    field: "colour.hex",
    value: hex,
    reads: hex,
  };
}

const part = (run: Run, from: number, to: number): Run => ({
  start: run.start + from,
  end: run.start + to,
  text: run.text.slice(from, to),
});

/** The longest stretch of whole words in the run that is a known colour: "Kvitlyng dark green" has "dark green". */
function knownIn(run: Run): Run | null {
  const words = [...run.text.matchAll(/[\p{L}\p{N}'’-]+/gu)];
  for (let length = Math.min(words.length, 3); length > 0; length -= 1)
    for (let first = words.length - length; first >= 0; first -= 1) {
      const [from, last] = [words[first], words[first + length - 1]];
      if (!from || !last) continue;
      const stretch = part(run, from.index, last.index + last[0].length);
      if (guessedHex(stretch.text)) return stretch;
    }
  return null;
}

/** Makers and codes are written with capitals or digits; a colour is a run of small letters. */
const smallWords = /(?:^|\s)(\p{Ll}[\p{Ll}'’-]*(?:\s+\p{Ll}[\p{Ll}'’-]*)*)$/u;

/** Two words that begin the line: there a capital may only be the sentence's ("Fog blue gouache"). */
const firstWords = /^(\p{L}\p{Ll}+\s\p{Ll}+)$/u;

/** Words that all begin with a capital: "Fog Blue", and nothing tells a maker from the first word of a colour. */
const capitalWords = /^\p{Lu}[\p{L}'’-]*(?:\s+\p{Lu}[\p{L}'’-]*){1,2}$/u;

/** Where the kind is named, and the words that are no colours. */
type Where = Readonly<{ after: number; noColours: ReadonlySet<string> }>;

/** Small words that no colour's name has before its colour: "kind of black". */
const before = /^.*\s(?:of|in|with|av|i|med)\s+/iu;

function namedIn(run: Run, { after }: Where): Run | null {
  if (run.start >= after && capitalWords.test(run.text)) return run;
  const words = (run.start === 0 && firstWords.exec(run.text)?.[1]) || smallWords.exec(run.text)?.[1];
  return words ? part(run, run.text.length - words.length, run.text.length) : null;
}

/** A run without the words at its ends that are said of things and are no colours: "extra fine", "set". */
function withoutOthers(run: Run, { noColours }: Where): Run | null {
  const words = [...run.text.matchAll(/\S+/g)].map((word) => ({ word: word[0], at: word.index }));
  const isColour = ({ word }: { word: string }) => !noColours.has(word.toLowerCase());
  const first = words.find(isColour);
  const last = words.findLast(isColour);
  return first && last ? part(run, first.at, last.at + last.word.length) : null;
}

/**
 * The stretch of a run in which a colour stands. "fog blue" is a name of its own although only "blue" is
 * known: the words around a known one belong to it, and then no hex is given.
 */
function colourIn(run: Run, where: Where): Run | null {
  const known = knownIn(run);
  const written = namedIn(run, where);
  const own = written && part(written, before.exec(written.text)?.[0].length ?? 0, written.text.length);
  const named = own && withoutOthers(own, where);
  // Unknown words with capitals are as likely a maker: they stay in the name.
  if (!named || (!known && capitalWords.test(named.text))) return known;
  return known && !(named.start <= known.start && known.end <= named.end) ? known : named;
}

const isKnown = (run: Run): boolean => guessedHex(run.text) !== null;

/**
 * The colour words of a line, out of what nothing else has read.
 * @param runs in order; `after` is where the word that names the kind ends: a colour mostly follows it
 * @returns the name with the hex it is known for, or null when the line names no colour
 */
export function readColourName(
  runs: readonly Run[],
  family: Family,
  after: number,
  { words: { noColours }, says }: Voice,
): Found | null {
  if (!mayHaveColour(family)) return null;
  const found = runs.flatMap((run) => colourIn(run, { after, noColours }) ?? []);
  const candidates = hasColour(family) ? found : found.filter(isKnown);
  // Of several colours none is the one: "3 pastels: ochre, moss, slate".
  if (new Set(candidates.filter(isKnown).map(({ text }) => plainColour(text.toLowerCase()))).size > 1)
    return null;
  const best = candidates.find(isKnown) ?? candidates.find((run) => run.start >= after) ?? candidates[0];
  if (!best) return null;
  const name = plainColour(best.text.toLowerCase().replace(/\s+/g, " "));
  return { ...best, field: "colour", value: name, reads: says.about(says.colour, name) };
}
