import {
  type HueGroup,
  hueGroup,
  type Lab,
  type LightnessBand,
  labOf,
  lightnessBand,
} from "../../../engine/colour/index.ts";
import { gtin14, type StashItem } from "../../../engine/supply/index.ts";
import { englishName, plainName } from "../../words/engine/colour.ts";
import { factsOf } from "../../words/engine/supply.ts";
import { foldWords } from "../../words/fold-words.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";

/** Where a colour lies in the layout, and what it is called. */
export type Colouring = Readonly<{ lab: Lab; hue: HueGroup; band: LightnessBand; said: string }>;

/**
 * A stash item with what the screens ask of it again and again, each worked out once and not before it is asked for:
 * a stash of thousands shows but a few of them.
 */
export type Known = Readonly<{
  item: StashItem;
  facts: string;
  colour: Colouring | null;
  /** Everything it can be found by, folded. */
  findable: string;
}>;

export type State = keyof typeof stashWords.states;

export const stateOf = (item: StashItem): State => item.state ?? "ok";
export const placeOf = (item: StashItem): string => item.place?.trim() ?? "";

export const factsText = (supply: StashItem["supply"]): string =>
  factsOf(supply, (value) => format.number(value, 2)).join(", ");

function colouring({ supply }: StashItem): Colouring | null {
  const lab = labOf(supply.colour);
  if (!lab) return null;
  let said: string | undefined;
  return {
    lab,
    hue: hueGroup(lab),
    band: lightnessBand(lab),
    get said() {
      said ??= plainName(lab);
      return said;
    },
  };
}

function findableText(item: StashItem, facts: string, colour: Colouring | null): string {
  const { supply } = item;
  const texts = [
    supply.name,
    supply.maker,
    supply.line,
    supply.code,
    gtin14(supply.gtin),
    supply.colour?.name,
    colour?.said,
    colour && englishName(colour.lab),
    facts,
    stashWords.kinds[supply.family],
    item.place,
    stashWords.states[stateOf(item)],
    ...(item.tags ?? []),
    item.note,
  ];
  return foldWords(texts.filter(Boolean).join(" "));
}

function knownOf(item: StashItem): Known {
  let colour: Colouring | null | undefined;
  let facts: string | undefined;
  let findable: string | undefined;
  return {
    item,
    get colour() {
      if (colour === undefined) colour = colouring(item);
      return colour;
    },
    get facts() {
      facts ??= factsText(item.supply);
      return facts;
    },
    get findable() {
      findable ??= findableText(item, this.facts, this.colour);
      return findable;
    },
  };
}

/** What is known of each item is kept for as long as the item is the very same. */
const kept = new WeakMap<StashItem, Known>();

/** The stash as the screens look at it. */
export const knownStash = (stash: readonly StashItem[]): readonly Known[] =>
  stash.map((item) => {
    const known = kept.get(item) ?? knownOf(item);
    kept.set(item, known);
    return known;
  });
