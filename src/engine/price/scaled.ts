import { dividedBy, type Exact, times } from "../money/index.ts";
import { ok } from "../record/index.ts";
import type { Found, Scene } from "./book.ts";
import { type Option, optionOf } from "./choose.ts";
import { type Curve, curveOf } from "./curve.ts";
import { ofKind, otherPack } from "./found.ts";
import { ratioOf, within } from "./quantity.ts";
import { draftOf, quoteFound } from "./quote.ts";
import { fittedWords, proportionWords, rangeWords } from "./say.ts";
import type { Draft, Quote } from "./trace.ts";

/** How far quantities may be apart, either way, for a price in proportion to come before precedents. */
const nearFactor = 3;

/** The figure scaled from another pack, and whether it is a better guide than precedents. */
export type Scaled = Readonly<{ option: Option; beforePrecedents: boolean }>;

/** A price of another quantity: a list one, else the sender's own. */
const scalable = (scene: Scene): Found | undefined =>
  [...otherPack(scene, ofKind(scene, "list")), ...otherPack(scene, ofKind(scene, "card"))][0];

/** Where the workbook has too few prices to say how they grow. No range is known. */
const inProportion = (scene: Scene, quote: Quote): Draft =>
  draftOf(quote, "scaled", proportionWords(scene, quote));

/** By the fitted power, with the fit's range laid around the figure. */
function byCurve(scene: Scene, quote: Quote, { points, spread }: Curve): Draft {
  const [low, high]: readonly [Exact, Exact] = [dividedBy(quote.amount, spread), times(quote.amount, spread)];
  const words = fittedWords(scene, quote, points) + rangeWords(scene, low, high);
  return { ...draftOf(quote, "scaled", words), low, high };
}

/** The price of another pack brought to the line's own quantity, or null where there is none. */
export function scaledOf(scene: Scene): Scaled | null {
  const found = scalable(scene);
  const ratio = found && ratioOf(found.evidence.pack, scene.line.supply);
  if (!found?.evidence.price || !ratio) return null;
  const curve = curveOf(scene, ratio);
  const quote = quoteFound(scene, found, found.evidence.price, curve?.exponent);
  const beforePrecedents = curve !== null || within(ratio, nearFactor);
  if (!quote.ok) return { option: optionOf("scaled", quote), beforePrecedents };
  const draft = curve ? byCurve(scene, quote.value, curve) : inProportion(scene, quote.value);
  return { option: optionOf("scaled", ok(draft)), beforePrecedents };
}
