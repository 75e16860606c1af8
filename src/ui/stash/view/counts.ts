import { type Family, families, type StashItem } from "../../../engine/supply/index.ts";
import { format } from "../../words/index.ts";
import { stashWords as words } from "../../words/stash.ts";
import { type Known, placeOf, type State, stateOf } from "./known.ts";

/** One thing to narrow down by, and how many there are of it. */
export type Tally<Value extends string = string> = Readonly<{ value: Value; label: string; count: number }>;

export type Tallies = Readonly<{
  kinds: readonly Tally<Family>[];
  places: readonly Tally[];
  states: readonly Tally<State>[];
  /** "145 things in 13 places" */
  sum: string;
  /** "120 with a colour" */
  colours: string;
}>;

/** How often each value comes. */
export function tallied<Value extends string>(values: readonly Value[]): ReadonlyMap<Value, number> {
  const counts = new Map<Value, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return counts;
}

/** The most first. */
export const byCount = (a: Tally, b: Tally): number => b.count - a.count || a.label.localeCompare(b.label);

const hasColour = ({ supply: { colour } }: StashItem): boolean => Boolean(colour?.lab || colour?.hex);

/** How many of each kind, in each place and in each state; the most first, states from fine to dried out. */
export function talliesOf(stash: readonly Known[]): Tallies {
  const kinds = tallied(stash.map(({ item }) => item.supply.family));
  const places = tallied(stash.map(({ item }) => placeOf(item)));
  const states = tallied(stash.map(({ item }) => stateOf(item)));
  const named = [...places.keys()].filter((place) => place !== "").length;
  const count = (n: number) => format.count(n);
  return {
    kinds: families
      .flatMap((value) => {
        const n = kinds.get(value);
        return n === undefined ? [] : [{ value, label: words.kinds[value], count: n }];
      })
      .toSorted(byCount),
    places: [...places]
      .map(([value, n]) => ({ value, label: value || words.noPlace, count: n }))
      .toSorted(byCount),
    states: (["ok", "low", "empty", "dried"] as const).flatMap((value) => {
      const n = states.get(value);
      return n === undefined ? [] : [{ value, label: words.states[value], count: n }];
    }),
    sum: `${words.things(count(stash.length), stash.length === 1)}${named > 0 ? ` ${words.places(named)}` : ""}`,
    colours: words.colours(count(stash.filter(({ item }) => hasColour(item)).length)),
  };
}
