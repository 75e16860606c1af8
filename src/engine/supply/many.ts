import { deltaE2000, type Lab, labOf } from "../colour/index.ts";
import { keyOf } from "./identity.ts";
import { file } from "./multimap.ts";
import type { StashItem, Supply } from "./schema.ts";

/** Things of one role whose colours are as good as one. `middle` is the one that the others were found round. */
export type Alike = Readonly<{ items: readonly StashItem[]; middle: StashItem; lab: Lab }>;

/**
 * ΔE00 to the middle one within which colours of one role count as near-identical: side by side a difference of 2 is
 * just seen, in use it is not. The limit is ours.
 */
export const alikeUpTo = 2.5;

/** Fewer than so many are not many. */
const fewest = 3;

/**
 * SL of CIEDE2000 is at most 1.75 (at L* 0 or 100), and no other term takes from a difference in lightness, so that
 * colours further apart in L* need not be looked at.
 */
const mostLightness = 1.75;

/** What a colour can be used as: a gouache is no marker, and no watercolour either. */
function roleOf(supply: Supply): string {
  switch (supply.family) {
    case "paint":
      return keyOf(supply.family, supply.traits?.medium ?? "");
    case "marker":
    case "ink":
      return keyOf(supply.family, supply.traits?.base ?? "");
    case "liner":
      return keyOf(supply.family, supply.traits?.base ?? "", String(supply.traits?.widthMm ?? ""));
    case "colour-pencil":
      return keyOf(supply.family, supply.traits?.binder ?? "");
    case "pastel":
      return keyOf(supply.family, supply.traits?.kind ?? "");
    default:
      return keyOf(supply.family);
  }
}

type Spot = Readonly<{ item: StashItem; lab: Lab; at: number }>;

/** The stretch of a list sorted by lightness that lies within reach of one. */
function* around(sorted: readonly Spot[], at: number, reach: number): Generator<Spot> {
  const l = sorted[at]?.lab.l ?? 0;
  for (let up = at + 1; up < sorted.length; up++) {
    const spot = sorted[up];
    if (!spot || spot.lab.l - l > reach) break;
    yield spot;
  }
  for (let down = at - 1; down >= 0; down--) {
    const spot = sorted[down];
    if (!spot || l - spot.lab.l > reach) break;
    yield spot;
  }
}

/** Round each that is still free, the ones that are free and near; the fullest groups win. */
function clustered(spots: readonly Spot[]): readonly Alike[] {
  const sorted = spots.toSorted((a, b) => a.lab.l - b.lab.l || a.at - b.at);
  const reach = alikeUpTo * mostLightness;
  const near = sorted.map((spot, at) =>
    [...around(sorted, at, reach)].filter(({ lab }) => deltaE2000(spot.lab, lab) <= alikeUpTo),
  );
  const order = sorted
    .map((_, at) => at)
    .toSorted((a, b) => (near[b]?.length ?? 0) - (near[a]?.length ?? 0) || a - b);
  const taken = new Set<Spot>();
  const groups: Alike[] = [];
  for (const at of order) {
    const middle = sorted[at];
    if (!middle || taken.has(middle)) continue;
    const free = (near[at] ?? []).filter((spot) => !taken.has(spot));
    if (free.length + 1 < fewest) continue;
    const all = [middle, ...free].toSorted((a, b) => a.at - b.at);
    for (const spot of all) taken.add(spot);
    groups.push({ items: all.map(({ item }) => item), middle: middle.item, lab: middle.lab });
  }
  return groups;
}

/**
 * Which colours are owned many times over: three or more of one role (family and medium, base or binder) within
 * ΔE00 2.5 of the one in their middle. Used up and dried out ones are left out: they are not owned any more.
 * @returns the most first, then in the order of the stash; each thing is in one group at most
 */
export function manyAlike(stash: readonly StashItem[]): readonly Alike[] {
  const roles = new Map<string, Spot[]>();
  stash.forEach((item, at) => {
    const lab = labOf(item.supply.colour);
    const isGone = item.state === "empty" || item.state === "dried" || item.owned === 0;
    if (lab && !isGone) file(roles, roleOf(item.supply), { item, lab, at });
  });
  const places = new Map(stash.map((item, at) => [item, at]));
  const first = ({ items: [item] }: Alike) => (item && places.get(item)) ?? 0;
  return [...roles.values()]
    .flatMap(clustered)
    .toSorted((a, b) => b.items.length - a.items.length || first(a) - first(b));
}
