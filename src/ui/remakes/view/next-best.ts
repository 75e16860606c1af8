import type { Candidate, LineMatch } from "../../../engine/match/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { format } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { factsText } from "./facts.ts";
import type { NextView } from "./rows.ts";
import { outOfHundred, type Shelves } from "./solve.ts";

const words = remakeWords.standIns;

const standsIn = ({ leftOut, verdict }: Candidate): boolean => leftOut === null && verdict !== "gap";

/** After a person's own pick: the next down the list, so that one key walks through it. */
function nextDown({ pick, candidates }: LineMatch): Candidate | undefined {
  const at = candidates.findIndex(({ stash }) => stash === pick?.stash);
  return at === -1 ? undefined : candidates.slice(at + 1).find(standsIn);
}

/** A name short enough for a row: what it shares with the present one is left out, or told apart by its facts. */
function shortName({ supply }: StashItem, now: string): string {
  const { name } = supply;
  if (name === now) return [name, factsText(supply)].filter(Boolean).join(", ");
  const shared = `${name.split(", ")[0] ?? ""}, `;
  return now.startsWith(shared) && name.startsWith(shared) ? name.slice(shared.length) : name;
}

/** Up to here two costs are one: neither shows in hundredths. */
const oneCost = 0.005;

type Near = Pick<Candidate, "likeness">;

/**
 * What the runner-up costs, of 100: on its own line, and, where that is not the same, over all lines added up. A
 * swap can move others: the runner-up may be nearer here, and still cost something elsewhere.
 */
function costText(pick: Near, next: Near, all: number, lines: number): string {
  const here = outOfHundred(pick.likeness) - outOfHundred(next.likeness); // as both are printed
  return Math.abs(pick.likeness - next.likeness - all) < oneCost
    ? words.costs(here)
    : words.costsApart(here, outOfHundred(all), lines);
}

/** The runner-up of a line and what it costs; null where there is none. */
export function nextBest(match: LineMatch, shelves: Shelves): NextView | null {
  const { pick, secondChoice, candidates } = match;
  const own = pick?.by === "person";
  const next = own ? nextDown(match) : candidates.find(({ stash }) => stash === secondChoice?.stash);
  const item = shelves.item(next?.stash);
  if (!pick || !next || !item) return null;
  const figure = format.count(outOfHundred(next.likeness));
  const name = shortName(item, shelves.item(pick.stash)?.supply.name ?? "");
  const text =
    own || !secondChoice
      ? words.nextPlain(name, figure)
      : words.next(name, figure, costText(pick, next, secondChoice.cost, shelves.count));
  return { stash: next.stash, name, text };
}
