import type { HueName } from "../../colour/index.ts";
import { foldText } from "../fold.ts";

/** One thing that a word says of a colour. A hue: every name that it may go by, and what it brings to mind. */
export type Atom =
  | Readonly<{ kind: "hue"; hues: readonly HueName[]; hex: string }>
  | Readonly<{
      kind:
        | "grey"
        | "white"
        | "black"
        | "light"
        | "dark"
        | "very"
        | "vivid"
        | "muted"
        | "greyish"
        | "warm"
        | "cool";
    }>;

const hue = (hex: string, ...hues: readonly HueName[]): Atom => ({ kind: "hue", hues, hex });

/**
 * What each stem says, in English and Swedish, every form of it. The hues that a word takes in are ours, made so
 * that neighbours overlap: one person's green is another's blue-green.
 */
const stems: readonly (readonly [words: string, atom: Atom])[] = [
  ["red röd rött röda", hue("#c8102e", "red", "red-orange", "crimson")],
  ["orange orangea", hue("#f08019", "orange", "red-orange", "yellow-orange")],
  ["yellow gul gult gula", hue("#f5d327", "yellow", "yellow-orange")],
  ["green grön grönt gröna", hue("#3d8b3d", "green", "yellow-green", "blue-green", "olive")],
  ["yellowgreen gulgrön gulgrönt gulgröna", hue("#9acd32", "yellow-green", "olive")],
  ["bluegreen greenblue blågrön blågrönt blågröna grönblå grönblått", hue("#137e6d", "blue-green", "teal")],
  ["teal turquoise turkos turkost turkosa", hue("#1c9c9c", "teal", "blue-green")],
  ["blue blå blått blåa", hue("#2458b8", "blue", "blue-violet")],
  ["blueviolet blåviolett blåvioletta blålila", hue("#4a3fa8", "blue-violet", "violet")],
  ["violet violett violetta", hue("#7b3fa0", "violet", "blue-violet", "purple")],
  ["purple lila", hue("#8a2f95", "purple", "violet")],
  ["pink rosa skär skärt", hue("#ea8fb0", "pink")],
  ["crimson karmosinröd karmosinrött", hue("#a4133c", "crimson")],
  ["brown brun brunt bruna", hue("#7a4a26", "brown", "ochre")],
  ["ochre ockragul ockragult", hue("#c28a2c", "ochre", "yellow-orange")],
  ["olive olivgrön olivgrönt oliv", hue("#6b6b2a", "olive", "yellow-green")],
  ["grey gray grå grått gråa", { kind: "grey" }],
  ["white vit vitt vita", { kind: "white" }],
  ["black svart svarta", { kind: "black" }],
  ["light pale ljus ljust ljusa blek blekt bleka", { kind: "light" }],
  ["dark deep mörk mörkt mörka djup djupt djupa", { kind: "dark" }],
  ["very mycket", { kind: "very" }],
  ["vivid bright strong klar klart klara stark starkt starka", { kind: "vivid" }],
  ["muted dusty dull dämpad dämpat dämpade dov dovt", { kind: "muted" }],
  ["greyish grayish gråaktig gråaktigt gråaktiga", { kind: "greyish" }],
  ["warm varm varmt varma", { kind: "warm" }],
  ["cool cold kall kallt kalla sval svalt svala", { kind: "cool" }],
];

const atomByStem: ReadonlyMap<string, Atom> = new Map(
  stems.flatMap(([words, atom]) => words.split(" ").map((word): [string, Atom] => [foldText(word), atom])),
);

/** Endings that make a leaning of a hue: "greenish", "grönaktig". */
const leaning = /^(?:d?ish|aktig[ta]?)/;

const longest = Math.max(...[...atomByStem.keys()].map((stem) => stem.length));

/** The atoms that a rest of a word is made of, longest stems first; null where some of it is none. */
function split(rest: string): readonly Atom[] | null {
  if (rest === "") return [];
  for (let length = Math.min(longest, rest.length); length >= 3; length--) {
    const atom = atomByStem.get(rest.slice(0, length));
    if (!atom) continue;
    const after = split(rest.slice(length).replace(leaning, ""));
    if (after) return [atom, ...after];
  }
  return null;
}

/**
 * What a word says of a colour, taken apart where it is made of several: "grey-green", "ljusblå", "reddish".
 * @param word folded by `foldText`
 * @returns null for a word that is not of these alone
 */
export function atomsIn(word: string): readonly Atom[] | null {
  const plain = word.replace(/-/g, "");
  return plain.length < 3 ? null : split(plain);
}
