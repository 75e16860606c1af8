import type { Language } from "../record/index.ts";
import { type Difference, difference } from "./difference.ts";
import type { Lab } from "./lab.ts";
import { type HueGroup, hueGroup } from "./names.ts";
import { type ColourWords, wordsIn } from "./words/index.ts";

type Lean = keyof ColourWords["leaning"];
type Hue = Exclude<HueGroup, "greys">;

/** The ring of hues a colour can lean along, in order of hue angle. */
const ring: readonly Hue[] = ["reds", "oranges", "yellows", "greens", "teals", "blues", "violets", "pinks"];
const leanTo: Readonly<Record<Hue, Lean>> = {
  reds: "red",
  oranges: "orange",
  yellows: "yellow",
  greens: "green",
  teals: "teal",
  blues: "blue",
  violets: "violet",
  pinks: "pink",
};

// Weighted parts under half a unit are not worth a word; the steps are ours.
const smallest = 0.5;
const amountOf = (size: number): keyof ColourWords["amounts"] =>
  size < 4 ? "little" : size < 10 ? "plain" : "much";

const isGrey = (lab: Lab): boolean => hueGroup(lab) === "greys";

/** The hue beside one on the ring. */
const besides = (hue: Hue, turn: number): Hue => ring.at((ring.indexOf(hue) + turn) % ring.length) ?? hue;

function leaning(kit: Lab, standIn: Lab, turn: number, words: ColourWords): string {
  const [from, to] = [hueGroup(kit), hueGroup(standIn)];
  if (from !== "greys") return words.leaning[leanTo[besides(from, turn > 0 ? 1 : -1)]];
  // A grey has no hue to turn from: name the one it takes on.
  return to === "greys" ? words.anotherGrey : words.leaning[leanTo[to]];
}

function sayPart(kit: Lab, standIn: Lab, part: "l" | "c" | "h", d: Difference, words: ColourWords): string {
  if (part === "h" || (part === "c" && isGrey(kit) && !isGrey(standIn)))
    return leaning(kit, standIn, d.h, words);
  const { lighter, darker, stronger, softer } = words.directions;
  const direction = part === "l" ? (d.l > 0 ? lighter : darker) : d.c > 0 ? stronger : softer;
  return [words.amounts[amountOf(Math.abs(d[part]))], direction].filter(Boolean).join(" ");
}

/**
 * How a stand-in misses a kit colour, as directions: the two largest of lighter or darker, softer or
 * stronger, leaning to a neighbouring hue.
 * @returns none, one or two phrases, the larger first; none when the colours are as good as equal
 */
export function missWords(kit: Lab, standIn: Lab, language: Language = "en"): readonly string[] {
  const d = difference(kit, standIn);
  return (["l", "c", "h"] as const)
    .filter((part) => Math.abs(d[part]) >= smallest && !(part === "h" && isGrey(kit)))
    .toSorted((a, b) => Math.abs(d[b]) - Math.abs(d[a]))
    .slice(0, 2)
    .map((part) => sayPart(kit, standIn, part, d, wordsIn[language]));
}
