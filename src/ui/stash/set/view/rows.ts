import type { SetColour } from "../../../../engine/intake/index.ts";
import {
  foldText,
  type Identity,
  identityOf,
  isGuessedColour,
  type StashItem,
  type Supply,
  sameIdentity,
} from "../../../../engine/supply/index.ts";
import { setWords as words } from "../../../words/set.ts";

/** One colour of the set as it would be added. */
export type SetRow = Readonly<{
  place: number;
  supply: Supply;
  facts: string;
  /** Why it is not added, where it is not: it is here already, or stands in the list before. */
  not: string | null;
}>;

/** What all of the set are, with one of its colours. */
function colourOf(base: Supply, { code, name, colour }: SetColour): Supply {
  const { colour: _, ...rest } = base;
  return {
    ...rest,
    name: [base.name, name].filter(Boolean).join(", "),
    ...(code === null ? {} : { code }),
    ...(colour === null ? {} : { colour }),
  };
}

const factsOf = ({ code, colour }: Supply): string =>
  [
    code ? words.number(code) : words.noNumber,
    ...(colour?.hex || colour?.lab ? [] : [words.noColour]),
    ...(isGuessedColour(colour) ? [words.guessed] : []),
  ].join(", ");

/** Items looked up by what they are called, so that a set of hundreds beside thousands is compared at once. */
function knownBy(supplies: readonly Supply[]) {
  const keysOf = ({ name, code }: Supply) => [
    `name ${foldText(name)}`,
    ...(code ? [`code ${foldText(code)}`] : []),
  ];
  const known = new Map<string, Identity[]>();
  const put = (supply: Supply) => {
    const identity = identityOf(supply);
    for (const key of keysOf(supply)) known.set(key, [...(known.get(key) ?? []), identity]);
  };
  supplies.forEach(put);
  return {
    put,
    has: (supply: Supply) => {
      const identity = identityOf(supply);
      return keysOf(supply).some((key) => known.get(key)?.some((other) => sameIdentity(identity, other)));
    },
  };
}

/**
 * The colours of a set as things to add, in the order of the list. One that is the same product as a thing of the
 * stash, or as one before it, is not added.
 * @param base what they all are; its colour, if it has one, is none of theirs
 */
export function setRows(
  base: Supply,
  colours: readonly SetColour[],
  stash: readonly StashItem[],
): readonly SetRow[] {
  const here = knownBy(stash.map(({ supply }) => supply));
  const before = knownBy([]);
  return colours.map((colour, place) => {
    const supply = colourOf(base, colour);
    const not = here.has(supply) ? words.here : before.has(supply) ? words.twice : null;
    before.put(supply);
    return { place, supply, facts: factsOf(supply), not };
  });
}
