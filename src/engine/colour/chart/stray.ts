import { deltaE2000 } from "../difference.ts";
import type { Lab } from "../lab.ts";
import type { Triple } from "../matrix.ts";
import type { Part } from "./parts.ts";
import type { Centre } from "./robust.ts";

/** What a part of a swatch is, seen from the colour of most of it. */
export type Stray =
  | "of-it"
  | "paper"
  | "glare"
  | "free-of-glare"
  | "brighter"
  | "shadow"
  | "other"
  | "clipped";

/** What there is around a swatch: the paper's own colour, and whether a shadow touches it. */
type Surrounding = Readonly<{ white: Lab; shadowed: boolean }>;

/** A part this near to paper's white is bare paper: a brush that skipped, a swatch that ends early. */
const nearPaper = 4;

const least = ([r, g, b]: Triple): number => Math.min(r, g, b);
const most = ([r, g, b]: Triple): number => Math.max(r, g, b);

const minus = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** Ratios, steadied where there is next to no light. */
const over = (a: Triple, b: Triple): Triple => [
  (a[0] + 0.01) / (b[0] + 0.01),
  (a[1] + 0.01) / (b[1] + 0.01),
  (a[2] + 0.01) / (b[2] + 0.01),
];

/** Glare is the lamp mirrored: it adds about the same to each channel, paper having been made white. */
const isGlare = (added: Triple): boolean => least(added) > 0 && least(added) > 0.55 * most(added);

/** More or less light multiplies each channel by about the same. */
const isSameInOtherLight = (ratios: Triple): boolean => most(ratios) < 1.3 * least(ratios);

/**
 * Sorts a part by how it differs from the middle colour. On a grey, glare and other light look the same; then a
 * shadow on the paper around decides.
 */
export function strayOf(part: Part, centre: Centre, { white, shadowed }: Surrounding): Stray {
  if (part.clipped === "high") return "glare";
  if (part.clipped === "low") return "clipped";
  if (centre.isOfIt(part)) return "of-it";
  if (deltaE2000(part.lab, white) < nearPaper) return "paper";
  const inOtherLight = isSameInOtherLight(over(part.linear, centre.linear));
  if (inOtherLight && shadowed) return part.lab.l < centre.lab.l ? "shadow" : "brighter";
  if (isGlare(minus(part.linear, centre.linear))) return "glare";
  if (isGlare(minus(centre.linear, part.linear))) return "free-of-glare";
  if (!inOtherLight) return "other";
  return part.lab.l < centre.lab.l ? "shadow" : "brighter";
}
