import { deltaE2000 } from "../difference.ts";
import { type Lab, labFromLinear } from "../lab.ts";
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

/** A part explained by other light or by glare comes this near to what that would make of the middle colour. */
const explained = 5;

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** More or less light multiplies each channel by the same. How far a part is from being that, in CIEDE2000. */
function fromOtherLight(part: Part, { linear }: Centre): number {
  const times = dot(part.linear, linear) / Math.max(dot(linear, linear), 1e-9);
  return deltaE2000(part.lab, labFromLinear([times * linear[0], times * linear[1], times * linear[2]]));
}

type Shade = Readonly<{ linear: Triple; lab: Lab }>;

/**
 * Glare is the lamp mirrored: it adds the same to each channel, paper having been made white. How far the
 * brighter shade is from being the darker one under glare, in CIEDE2000.
 */
function fromGlare(darker: Shade, brighter: Shade): number {
  const [r, g, b] = darker.linear;
  const added = (brighter.linear[0] + brighter.linear[1] + brighter.linear[2] - r - g - b) / 3;
  return deltaE2000(brighter.lab, labFromLinear([r + added, g + added, b + added]));
}

/**
 * Sorts a part by how it differs from the middle colour. On a grey, glare and other light look the same; then a
 * shadow on the paper around decides.
 */
export function strayOf(part: Part, centre: Centre, { white, shadowed }: Surrounding): Stray {
  if (part.clipped === "high") return "glare";
  if (part.clipped === "low") return "clipped";
  if (centre.isOfIt(part)) return "of-it";
  if (deltaE2000(part.lab, white) < nearPaper) return "paper";
  const isDarker = part.lab.l < centre.lab.l;
  const otherLight = fromOtherLight(part, centre);
  const glare = isDarker ? fromGlare(part, centre) : fromGlare(centre, part);
  if (Math.min(otherLight, glare) > explained) return "other";
  if (otherLight < glare || (shadowed && otherLight < explained)) return isDarker ? "shadow" : "brighter";
  return isDarker ? "free-of-glare" : "glare";
}
