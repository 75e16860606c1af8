/** Where something lies on the page. */
export type Spot = Readonly<{ x: number; y: number }>;
export type Arrow = "ArrowLeft" | "ArrowRight" | "ArrowUp" | "ArrowDown";

const along: Readonly<Record<Arrow, (from: Spot, to: Spot) => number>> = {
  ArrowLeft: (from, to) => from.x - to.x,
  ArrowRight: (from, to) => to.x - from.x,
  ArrowUp: (from, to) => from.y - to.y,
  ArrowDown: (from, to) => to.y - from.y,
};

export const isArrow = (key: string): key is Arrow => Object.hasOwn(along, key);

/** How far aside counts against how far along: what lies in line comes first. */
const asideWeight = 4;

/** The index of the spot that an arrow key leads to from another, or -1 where there is none that way. */
export function spotToward(arrow: Arrow, from: Spot, spots: readonly Spot[]): number {
  const isLevel = arrow === "ArrowLeft" || arrow === "ArrowRight";
  const cost = (to: Spot): number => {
    const ahead = along[arrow](from, to);
    const aside = Math.abs(isLevel ? to.y - from.y : to.x - from.x);
    return ahead > 1 ? ahead + aside * asideWeight : Number.POSITIVE_INFINITY;
  };
  const costs = spots.map(cost);
  const least = Math.min(...costs);
  return Number.isFinite(least) ? costs.indexOf(least) : -1;
}
