import { type Colour, deltaE2000, type Lab } from "../../../engine/colour/index.ts";
import { isGuessedColour, type StashItem } from "../../../engine/supply/index.ts";
import { format, words as frameWords } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { supplyWords } from "../../words/supply.ts";
import { type Known, placeOf, stateOf } from "./known.ts";
import { haveText } from "./rows.ts";

const words = stashWords.item;

/** A fact of an item: what it is about, the fact, and what goes with it in pale ink. */
export type Fact = Readonly<{ label: string; text: string; more?: string }>;

/** Another item whose colour is near. */
export type Near = Readonly<{ item: StashItem; name: string; text: string }>;

export type ItemView = Readonly<{
  name: string;
  facts: string;
  rows: readonly Fact[];
  nearest: readonly Near[];
}>;

const figure = (value: number): string => format.number(Math.round(value) || 0);
const labText = ({ l, a, b }: Lab): string => words.labFigures(figure(l), figure(a), figure(b));

/** How evenly a measured swatch had its colour, where that was kept; below 1 nobody sees it vary. */
const spreadText = (spread: unknown): readonly string[] => {
  if (typeof spread !== "number" || !(spread >= 0)) return [];
  return [spread < 1 ? words.evenly : words.varies(format.number(spread))];
};

/** Where a colour comes from, unless it was typed. */
function originOf(given: Colour | null | undefined): string | null {
  if (given?.from === "measured") return [words.measured, ...spreadText(given.spread)].join(", ");
  return isGuessedColour(given) ? frameWords.colourGuessed : null;
}

function colourFact({ item, colour }: Known): readonly Fact[] {
  if (!colour) return [];
  const from = originOf(item.supply.colour);
  return [
    {
      label: words.colour,
      text: `${colour.said}, ${labText(colour.lab)}`,
      ...(from ? { more: from } : {}),
    },
  ];
}

function lightfastFact({ supply }: StashItem): readonly Fact[] {
  const level = supply.lightfast;
  if (!level) return [];
  const text = supplyWords.lightfastLevels[level] ?? supplyWords.blueWool(level.slice(2));
  return [{ label: words.lightfast, text }];
}

/** What its label says, and whose word counts. */
const safetyFact = ({ supply: { safety } }: StashItem): readonly Fact[] =>
  safety ? [{ label: words.label, text: safety, more: words.labelMore }] : [];

function makerFact({ supply }: StashItem): readonly Fact[] {
  const text = [supply.maker, supply.line].filter(Boolean).join(", ");
  if (text === "" && !supply.code) return [];
  return [{ label: words.maker, text, ...(supply.code ? { more: words.code(supply.code) } : {}) }];
}

function haveFact(item: StashItem): Fact {
  const opened = item.opened ? [words.opened(format.date(item.opened))] : [];
  return {
    label: words.have,
    text: [haveText(item), ...opened, stashWords.states[stateOf(item)]].join(", "),
  };
}

const nearestShown = 3;

/** The nearest other colours of the stash, by ΔE00; of equals by id. */
export function nearestOf(stash: readonly Known[], { item, colour }: Known): readonly Near[] {
  if (!colour) return [];
  return stash
    .flatMap((other) =>
      other.colour && other.item.id !== item.id
        ? [{ item: other.item, deltaE: deltaE2000(colour.lab, other.colour.lab) }]
        : [],
    )
    .toSorted((a, b) => a.deltaE - b.deltaE || (a.item.id < b.item.id ? -1 : 1))
    .slice(0, nearestShown)
    .map((near) => ({
      item: near.item,
      name: near.item.supply.name,
      text: stashWords.apart(format.number(near.deltaE, 1, true)),
    }));
}

/** One item, ready to print. */
export const itemView = (stash: readonly Known[], known: Known): ItemView => ({
  name: known.item.supply.name,
  facts: known.facts,
  rows: [
    ...colourFact(known),
    ...makerFact(known.item),
    ...(placeOf(known.item) ? [{ label: words.where, text: placeOf(known.item) }] : []),
    haveFact(known.item),
    ...lightfastFact(known.item),
    ...safetyFact(known.item),
    ...(known.item.note ? [{ label: words.note, text: known.item.note }] : []),
  ],
  nearest: nearestOf(stash, known),
});
