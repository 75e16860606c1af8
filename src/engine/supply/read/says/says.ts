import type { Family } from "../../traits.ts";
import type { Called } from "../kinds.ts";

/** A trait's word, or "" where it is not known. */
export type Word = (trait: string) => string;

/** How one language says what was read, and what it calls a supply. */
export type Says = Readonly<{
  /** What a family is called in the middle of a sentence. */
  families: Readonly<Record<Family, string>>;
  /** What a trait is called; a colour is none, but may be missing like one. */
  trait: (name: string) => string;
  colour: string;
  /** A value of a trait in this language's words. */
  value: (family: Family, trait: string, value: string) => string;
  /** A kind with the values that its word tells: "paper, a block". */
  kind: (family: Family, values: readonly string[]) => string;
  not: (name: string) => string;
  about: (name: string, value: string) => string;
  maker: string;
  line: string;
  quantity: (count: number) => string;
  /** A figure with this language's decimal sign, however it was written. */
  figure: (value: number) => string;
  sheets: (count: number) => string;
  grade: (grade: string) => string;
  pigment: (name: string) => string;
  lightfast: (rating: string) => string;
  /** Weight of watercolour paper that was written in pounds. */
  pounds: (gsm: number) => string;
  price: (written: string) => string;
  called: Readonly<Record<Called, string>>;
  /** What a supply is called by its traits: by what sets it apart, and only then by its kind. */
  names: Readonly<Record<Family, (word: Word) => string>>;
}>;
