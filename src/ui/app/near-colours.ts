import { deltaE2000, type Lab, labOf, parseColour } from "../../engine/colour/index.ts";
import { readColourPhrase, type StashItem } from "../../engine/supply/index.ts";
import { format, words } from "../words/index.ts";
import type { Entry } from "./entries.ts";
import { go } from "./navigate.ts";

const shownAtOnce = 6;

/**
 * The colour a text names: "#6b7d3a", "lab(…)" or words such as "dark blue", as far as they are known. Six letters
 * alone are a word.
 */
function colourOf(text: string): Lab | null {
  const parsed = /[#\d]/.test(text) ? parseColour(text) : null;
  if (parsed?.ok) return parsed.value;
  return readColourPhrase(text)?.lab ?? null;
}

/** Where the text names a colour: the things owned that are nearest to it by ΔE00, nearest first. */
export function nearColours(stash: readonly StashItem[], text: string): readonly Entry[] {
  const wanted = colourOf(text.trim());
  if (!wanted) return [];
  return stash
    .flatMap(({ id, supply }) => {
      const lab = labOf(supply.colour);
      return lab ? [{ id, name: supply.name, apart: deltaE2000(wanted, lab) }] : [];
    })
    .toSorted((a, b) => a.apart - b.apart)
    .slice(0, shownAtOnce)
    .map(({ id, name, apart }) => ({
      key: `stash ${id}`,
      kind: "stash",
      name,
      fact: words.find.apart(format.number(apart, 1, true)),
      run: () => go({ name: "stash-item", id }),
    }));
}
