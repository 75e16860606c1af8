import { type Difference, difference } from "./difference.ts";
import type { Lab } from "./lab.ts";
import { type HueGroup, hueGroup } from "./names.ts";

/** The ring of hues a colour can lean along, in order of hue angle. */
const ring = ["red", "orange", "yellow", "green", "teal", "blue", "violet", "pink"] as const;
const ringOf: Readonly<Record<Exclude<HueGroup, "greys">, number>> = {
  reds: 0,
  oranges: 1,
  yellows: 2,
  greens: 3,
  teals: 4,
  blues: 5,
  violets: 6,
  pinks: 7,
};

// Weighted parts under half a unit are not worth a word; the steps are ours.
const smallest = 0.5;
const amount = (size: number): string => (size < 4 ? "a little " : size < 10 ? "" : "much ");

const isGrey = (lab: Lab): boolean => hueGroup(lab) === "greys";

function leaning(kit: Lab, standIn: Lab, turn: number): string {
  const [from, to] = [hueGroup(kit), hueGroup(standIn)];
  // A grey has no hue to turn from: name the one it takes on.
  if (from === "greys") return to === "greys" ? "another grey" : `leaning to ${ring[ringOf[to]]}`;
  const step = turn > 0 ? 1 : ring.length - 1;
  return `leaning to ${ring[(ringOf[from] + step) % ring.length]}`;
}

function sayPart(kit: Lab, standIn: Lab, part: "l" | "c" | "h", d: Difference): string {
  const size = amount(Math.abs(d[part]));
  if (part === "l") return `${size}${d.l > 0 ? "lighter" : "darker"}`;
  if (part === "h" || (isGrey(kit) && !isGrey(standIn))) return leaning(kit, standIn, d.h);
  return `${size}${d.c > 0 ? "stronger" : "softer"}`;
}

/**
 * How a stand-in misses a kit colour, as directions: the two largest of lighter or darker, softer or
 * stronger, leaning to a neighbouring hue.
 * @returns none, one or two phrases, the larger first; none when the colours are as good as equal
 */
export function missWords(kit: Lab, standIn: Lab): readonly string[] {
  const d = difference(kit, standIn);
  return (["l", "c", "h"] as const)
    .filter((part) => Math.abs(d[part]) >= smallest && !(part === "h" && isGrey(kit)))
    .toSorted((a, b) => Math.abs(d[b]) - Math.abs(d[a]))
    .slice(0, 2)
    .map((part) => sayPart(kit, standIn, part, d));
}
