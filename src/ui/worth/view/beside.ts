import type { Money } from "../../../engine/money/index.ts";
import {
  cardTotals,
  parcelsFrom,
  passingOf,
  type TierWorth,
  withoutBorder,
} from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { isCharged } from "./notes.ts";
import { inHundred } from "./percent.ts";
import { isLeast, lineName, lineNumber, marketName, type Scene, tierName, tierOf } from "./scene.ts";

const words = worthWords.beside;
const shareWords = worthWords.share;

/** At which line each tier has paid for itself, in words. */
export type PassingRow = Readonly<{
  id: string;
  name: string;
  list: string;
  listPostage: string;
  shop: string;
  shopPostage: string;
}>;

const at = (scene: Scene, id: string | null): string =>
  id === null
    ? isLeast(scene)
      ? words.notYet
      : words.never
    : words.at(lineNumber(scene, id), lineName(scene, id));

export function passingRows(scene: Scene): readonly PassingRow[] {
  return scene.worth.tiers.map((tier) => {
    const { list, street } = passingOf(scene.worth.lines, tier);
    return {
      id: tier.tier,
      name: tierName(tierOf(scene, tier.tier)),
      list: at(scene, list.price),
      listPostage: at(scene, list.withPostage),
      shop: at(scene, street.price),
      shopPostage: at(scene, street.withPostage),
    };
  });
}

/** How the lines are gone through; said with care where some have no price, or where the border takes more. */
export function passingText(scene: Scene): string {
  const text = isLeast(scene) ? words.textLeast : words.text;
  return scene.worth.tiers.some(isCharged) ? `${text} ${words.textNoBorder}` : text;
}

/** What the card says beside what was found; null where it prices nothing. */
export function cardText(scene: Scene): string | null {
  const { worth, why, format } = scene;
  const { card, found, lines, without } = cardTotals(worth.currency, why.lines);
  if (lines === 0) return null;
  return words.card(format.money(card), format.money(found), lines, lines + without.length);
}

function borderText(scene: Scene, tier: TierWorth): string {
  const { format } = scene;
  const free = withoutBorder(tier);
  const gain = (money: Money) => format.amount(money, "always");
  const name = tierName(tierOf(scene, tier.tier));
  return words.border(name, format.money(free.kitCost), gain(free.listGain), gain(free.streetGain));
}

/** Worth without what the border charges, and how my own parcels from there fared. Empty without a border. */
export function borderTexts(scene: Scene): readonly string[] {
  const { kit, market, worth, book } = scene;
  const charged = worth.tiers.filter(isCharged);
  if (!kit.shipsFrom || kit.shipsFrom === market.id || charged.length === 0) return [];
  const origin = marketName(scene, kit.shipsFrom);
  const { parcels, charged: hit, unknown } = parcelsFrom(book, kit.shipsFrom, market.id);
  const own = parcels === 0 ? words.noParcels(origin) : words.parcels(parcels, origin, hit);
  const rest = unknown > 0 ? ` ${words.unknown(unknown)}` : "";
  return [...charged.map((tier) => borderText(scene, tier)), `${own}${rest}`];
}

/** How much of it has to be used for each tier to pay, at shop prices; null where that cannot be said. */
export function shareText(scene: Scene): string | null {
  if (isLeast(scene)) return null; // the total is only a least one, so the share would be only a most
  const shares = scene.worth.tiers.flatMap(({ tier, breakEvenShare }) =>
    breakEvenShare === null
      ? []
      : [{ name: tierName(tierOf(scene, tier)), percent: Number(inHundred(breakEvenShare)) }],
  );
  const [first, ...rest] = shares.filter(({ percent }) => percent < 100);
  const over = shares.filter(({ percent }) => percent >= 100);
  if (!first)
    return shares.length === 0
      ? null
      : shares.length === 1 && over[0]
        ? shareWords.over(over[0].name)
        : shareWords.overAll;
  const print = (percent: number) => scene.format.count(percent);
  return [
    shareWords.use(print(first.percent), first.name),
    ...rest.map(({ name, percent }) => shareWords.also(name, print(percent))),
    ...over.map(({ name }) => shareWords.over(name)),
  ].join(" ");
}
