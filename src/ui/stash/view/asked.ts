import type { ColourPhrase, Family } from "../../../engine/supply/index.ts";
import type { State } from "./known.ts";

/** A trait asked for and its value, as text: "base" is "alcohol", "widthMm" is "0.3". */
export type TraitAsked = Readonly<{ trait: string; value: string }>;

/** What is asked of the stash: words or a colour typed, a thing to be like, and what was ticked. Null: no matter. */
export type Asked = Readonly<{
  text: string;
  kind: Family | null;
  place: string | null;
  state: State | null;
  tag: string | null;
  maker: string | null;
  line: string | null;
  traits: readonly TraitAsked[];
  /** The id of a thing whose colour is wanted. */
  near: string | null;
}>;

/** What is asked beside the text typed. */
export type Ticked = Omit<Asked, "text">;

export const anything: Asked = {
  text: "",
  kind: null,
  place: null,
  state: null,
  tag: null,
  maker: null,
  line: null,
  traits: [],
  near: null,
};

/** Reads what words say of a colour; loaded when a search begins. */
export type ReadPhrase = (text: string) => ColourPhrase | null;

/** How the traits asked for stand in the address: "base:alcohol;widthMm:0.3". */
export function traitsText(traits: readonly TraitAsked[]): string | null {
  const parts = traits.map(({ trait, value }) => `${trait}:${encodeURIComponent(value)}`);
  return parts.length > 0 ? parts.join(";") : null;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text; // a lone % in a mistyped address
  }
}

/** What `traitsText` wrote. What is none of it is left out. */
export const readTraits = (text: string | null): readonly TraitAsked[] =>
  (text ?? "").split(";").flatMap((part) => {
    const at = part.indexOf(":");
    return at > 0 ? [{ trait: part.slice(0, at), value: decoded(part.slice(at + 1)) }] : [];
  });

/** The traits with one more asked for, in place of another value of it; or without it, where it was asked for. */
export function withTrait(traits: readonly TraitAsked[], wanted: TraitAsked): readonly TraitAsked[] {
  const others = traits.filter(({ trait }) => trait !== wanted.trait);
  const isOff = traits.some(({ trait, value }) => trait === wanted.trait && value === wanted.value);
  return isOff ? others : [...others, wanted];
}
