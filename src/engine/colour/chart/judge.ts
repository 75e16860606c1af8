import { deltaE2000 } from "../difference.ts";
import type { Lab } from "../lab.ts";
import type { Around } from "./around.ts";
import type { Part } from "./parts.ts";
import { type Centre, robustMean } from "./robust.ts";
import type { CellReading, Doubt } from "./shapes.ts";
import { type Stray, strayOf } from "./stray.ts";

export type Judged = Omit<CellReading, "row" | "column">;

/** What there is to judge a swatch by. */
export type Swatch = Readonly<{ parts: readonly Part[]; pixels: number; around: Around; white: Lab }>;

/** Limits of ours, found on rendered charts; no source. Shares are of a swatch's parts. */
const limits = {
  fewestPixels: 36,
  /** Glare only adds light: what it leaves free can be read, if it is this much. */
  freeOfGlare: 0.4,
  /** With this much glare, what seems free of it must be even, or it lies under the glare's soft rim. */
  muchGlare: 0.2,
  evenBesideGlare: 2,
  /** If this much is darker by as much in each channel, the rest lies under glare. */
  underGlare: 0.08,
  /** Of any other swatch this much must be of one colour. */
  ofOneColour: 0.6,
  /** This much in another colour or in another light is a second colour, or an edge of a shadow. */
  second: 0.2,
  /** If this much is brighter beside a shadow, the rest lies in it. */
  underShadow: 0.1,
  /** CIEDE2000, root mean square over the parts that count. */
  widestSpread: 5,
  /** CIEDE2000 from the paper. */
  emptyWithin: 2.5,
  /** Times the light that a perfect white sends back. */
  brighterThanWhite: 1.1,
};

type Shares = Readonly<Record<Stray, number>>;

function sharesOf(strays: readonly Stray[]): Shares {
  const share = (kind: Stray) => strays.filter((one) => one === kind).length / Math.max(1, strays.length);
  return {
    "of-it": share("of-it"),
    paper: share("paper"),
    glare: share("glare"),
    "free-of-glare": share("free-of-glare"),
    brighter: share("brighter"),
    shadow: share("shadow"),
    other: share("other"),
    clipped: share("clipped"),
  };
}

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / Math.max(1, values.length));

/** Spread over the parts that count. */
function spreadOf(parts: readonly Part[], strays: readonly Stray[], centre: Centre): number {
  const counted = parts.filter((_, at) => strays[at] === "of-it");
  return rootMeanSquare(counted.map(({ lab }) => deltaE2000(lab, centre.lab)));
}

const isGlared = (shares: Shares): boolean =>
  shares.glare > 0 &&
  shares["of-it"] < limits.ofOneColour &&
  shares.glare >= shares.other + shares.shadow + shares.brighter;

/** Too little of it is free of glare, or none: only its rim is darker, or the glare fades out all over it. */
const isUnderGlare = (shares: Shares, spread: number): boolean =>
  (isGlared(shares) && shares["of-it"] < limits.freeOfGlare) ||
  shares["free-of-glare"] >= limits.underGlare ||
  (shares.glare >= limits.muchGlare && spread > limits.evenBesideGlare);

/** An edge of a shadow: two lights around it, or two on it. Most of it in the lesser one may not be levelled. */
const isShaded = (shares: Shares, { divided, shadowed }: Around): boolean =>
  divided ||
  shares.brighter >= (shadowed ? limits.underShadow : limits.second) ||
  (shares["of-it"] < limits.ofOneColour && shares.shadow + shares.brighter >= limits.second);

const isUneven = (shares: Shares, spread: number): boolean =>
  shares.other >= limits.second || shares.paper > 1 - limits.ofOneColour || spread > limits.widestSpread;

function doubtsOf(swatch: Swatch, shares: Shares, centre: Centre, spread: number): readonly Doubt[] {
  const { around, white, pixels } = swatch;
  const tooBright = Math.max(...centre.linear) > limits.brighterThanWhite;
  const empty = deltaE2000(centre.lab, white) < limits.emptyWithin;
  const found: Readonly<Record<Doubt, boolean>> = {
    "few-pixels": pixels < limits.fewestPixels,
    glare: tooBright || isUnderGlare(shares, spread),
    shadow: isShaded(shares, around),
    uneven: !empty && isUneven(shares, spread),
    clipped: shares.clipped >= limits.second,
    empty,
  };
  const named = (Object.keys(found) as Doubt[]).filter((doubt) => found[doubt]); // the keys of a record of doubts
  const explained = shares["of-it"] >= limits.ofOneColour || isGlared(shares);
  return named.length === 0 && !explained ? ["uneven"] : named;
}

const unread = (doubt: Doubt): Judged => ({
  ...{ lab: null, seen: null, spread: null, certainty: 0 },
  doubts: [doubt],
});

/** A spread this wide, or sides this far apart, leave no certainty; ours, no source. */
const [noCertaintySpread, noCertaintyRange] = [12, 0.3];
const left = (amount: number, all: number): number => Math.max(0, 1 - amount / all);

/** What a swatch's colour is, as far as it can be told, and every reason to doubt it. */
export function judge(swatch: Swatch): Judged {
  const { parts, around, white } = swatch;
  if (swatch.pixels === 0) return unread("few-pixels");
  const centre = robustMean(parts.filter(({ clipped }) => clipped === null));
  if (!centre) return unread("clipped");
  const strays = parts.map((part) => strayOf(part, centre, { white, shadowed: around.shadowed }));
  const shares = sharesOf(strays);
  const spread = spreadOf(parts, strays, centre);
  const doubts = doubtsOf(swatch, shares, centre, spread);
  return {
    lab: doubts.length === 0 ? centre.lab : null,
    ...{ seen: centre.lab, spread, doubts },
    certainty: shares["of-it"] * left(spread, noCertaintySpread) * left(around.range, noCertaintyRange),
  };
}
