import type { Family } from "../../traits.ts";
import type { KindName, Sets } from "../kinds.ts";

/** By trait and value: the words that tell it, separated by commas. Values `true` and `false` are yes and no. */
export type Telling = Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * The words of one language, as people write them on lines. Each text is a list of words or phrases with commas
 * between; parts of a phrase may be joined by a space, a hyphen or nothing.
 */
export type Wording = Readonly<{
  /** What names each kind of thing. */
  kinds: Readonly<Partial<Record<KindName, string>>>;
  /** Words written as one that name a kind and tell traits of it: "akvarellblock". */
  compounds: readonly (readonly [kind: KindName, words: string, tells: Sets])[];
  /** What tells the traits of each family. */
  traits: Readonly<Record<Family, Telling>>;
  /** What may follow a word without changing it, as a pattern: plural, article. */
  ending: string;
  /** What a word of several ends in, as a pattern. */
  plural: string;
  numbers: Readonly<Record<string, number>>;
  /** Words for two and for twelve of a thing, with the small words around them. */
  two: string;
  dozen: string;
  halfDozen: string;
  /** Packs that hold a number of things, the word between, and what a number of things is called. */
  packs: string;
  of: string;
  pieces: string;
  /** What holds one of a thing, so that counting it counts the thing. */
  holders: string;
  /** What stands before a number that counts. */
  quantity: string;
  /** What stands before a number that counts nothing: a brush's size, a code. */
  size: string;
  /** What stands before a colon and a colour. */
  label: string;
  /** What may stand between a number and its sheets. */
  loose: string;
  sheets: string;
  inch: string;
  /** What stands between "2" and "1" in "2 in 1". */
  inOne: string;
  /** Small words that only join others. */
  joiners: string;
  /** Words that are said of things and are no colours. */
  noColours: string;
  /**
   * Words that are taken where this language is spoken only: in another they mean something else. Where a figure
   * stands beside it, as with packs and pieces, a word is taken everywhere.
   */
  onlyHere: string;
}>;

/** The words of a list. */
export const listed = (text: string): readonly string[] =>
  text
    .split(",")
    .map((word) => word.trim())
    .filter((word) => word !== "");
