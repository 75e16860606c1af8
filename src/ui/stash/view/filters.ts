import { type Family, families } from "../../../engine/supply/index.ts";
import { traitFields, valueWord } from "../../supply-form/view/trait-fields.ts";
import { findWords } from "../../words/find.ts";
import { stashWords as words } from "../../words/stash.ts";
import type { Ticked } from "./asked.ts";
import { byCount, type Tallies, type Tally, tallied } from "./counts.ts";
import type { Known } from "./known.ts";
import { printedValue, traitValues } from "./traits.ts";

/** What a list of the margin narrows down by: a field of what is asked, or a trait of the family looked at. */
export type FilterKey = "kind" | "place" | "state" | "tag" | "maker" | "line" | `trait ${string}`;

/** One list to narrow down by. */
export type Filter = Readonly<{
  key: FilterKey;
  title: string;
  tallies: readonly Tally[];
  value: string | null;
}>;

type Kind = ReturnType<typeof traitFields>[number]["input"]["kind"];

function wordOf(family: Family, trait: string, kind: Kind, value: string): string {
  if (kind === "yes-no") return value === "true" ? findWords.yes : findWords.no;
  return kind === "word" || kind === "words" ? valueWord(family, trait, value) : printedValue(trait, value);
}

const byNumber = (a: Tally, b: Tally): number => Number(a.value) - Number(b.value);

/** What the traits of a family are in this stash, and how often. */
function traitFilters(stash: readonly Known[], family: Family, asked: Ticked): readonly Filter[] {
  const ofKind = stash.filter(({ item }) => item.supply.family === family);
  return traitFields(family).flatMap(({ trait, label, unit, input }): readonly Filter[] => {
    const counts = tallied(ofKind.flatMap(({ item }) => traitValues(item.supply, trait)));
    const value = asked.traits.find((one) => one.trait === trait)?.value ?? null;
    if (counts.size < 2 && value === null) return []; // nothing to tell apart by
    const tallies = [...counts].map(([one, count]) => ({
      value: one,
      label: [wordOf(family, trait, input.kind, one), unit].filter(Boolean).join(" "),
      count,
    }));
    const order = input.kind === "number" ? byNumber : byCount;
    return [{ key: `trait ${trait}`, title: label, tallies: tallies.toSorted(order), value }];
  });
}

const plainTallies = (values: readonly string[]): readonly Tally[] =>
  [...tallied(values)].map(([value, count]) => ({ value, label: value, count })).toSorted(byCount);

/** What the lines of a maker are, where one is asked for. */
function lineFilter(stash: readonly Known[], asked: Ticked): readonly Filter[] {
  if (asked.maker === null) return [];
  const lines = stash.flatMap(({ item: { supply } }) =>
    supply.maker === asked.maker && supply.line ? [supply.line] : [],
  );
  return lines.length === 0
    ? []
    : [{ key: "line", title: findWords.line, tallies: plainTallies(lines), value: asked.line }];
}

/** The lists that a stash can be narrowed down by, as far as there is anything to tell apart. */
export function filtersOf(stash: readonly Known[], tallies: Tallies, asked: Ticked): readonly Filter[] {
  const makers = plainTallies(stash.flatMap(({ item: { supply } }) => (supply.maker ? [supply.maker] : [])));
  const tags = plainTallies(stash.flatMap(({ item }) => item.tags ?? []));
  const known = families.find((family) => family === asked.kind);
  const all: readonly Filter[] = [
    { key: "kind", title: words.kind, tallies: tallies.kinds, value: asked.kind },
    ...(known ? traitFilters(stash, known, asked) : []),
    { key: "place", title: words.where, tallies: tallies.places, value: asked.place },
    { key: "state", title: words.state, tallies: tallies.states, value: asked.state },
    { key: "maker", title: findWords.maker, tallies: makers, value: asked.maker },
    ...lineFilter(stash, asked),
    { key: "tag", title: findWords.tag, tallies: tags, value: asked.tag },
  ];
  return all.filter(
    ({ key, tallies: some, value }) =>
      value !== null ||
      key === "kind" ||
      key === "place" ||
      (key === "tag" ? some.length > 0 : some.length > 1),
  );
}
