import type { RateUse } from "../../../engine/money/index.ts";
import type { TierWorth } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { ratesByDay } from "./rate.ts";
import { marketName, type Scene, tierName } from "./scene.ts";

const words = worthWords.note;

/** Every rate behind the figures shown: of the tiers' costs first, then of the prices gone with. */
function ratesUsed({ why }: Scene): readonly RateUse[] {
  const ofTiers = why.tiers.flatMap(({ cost }) => [...cost.goods, ...cost.postage]).map(({ rate }) => rate);
  const ofLines = why.lines
    .flatMap(({ estimate }) => [estimate.list, estimate.street])
    .flatMap((estimate) => estimate?.trace.sources ?? [])
    .map(({ rate }) => rate);
  return [...ofTiers, ...ofLines].flatMap((rate) => rate ?? []);
}

export const chargesOf = ({ duty, tax, handling }: TierWorth) => [duty, tax, handling];
const isNothing = (amount: string): boolean => /^[0.]+$/.test(amount);
export const isCharged = (tier: TierWorth): boolean =>
  chargesOf(tier).some(({ amount }) => !isNothing(amount));

function borderNote({ kit, market, worth, why }: Scene): string | null {
  if (!kit.shipsFrom || kit.shipsFrom === market.id || worth.tiers.length === 0) return null;
  if (worth.tiers.some(isCharged)) return words.charged;
  return why.tiers.some(({ cost }) => cost.border.rule) ? words.free : words.noRule(market.name);
}

function originNote(scene: Scene): string {
  const { kit, market } = scene;
  if (!kit.shipsFrom) return words.fromUnknown;
  return kit.shipsFrom === market.id ? words.home : words.from(marketName(scene, kit.shipsFrom));
}

/** What stands in the margin: rates and their day, where it ships from, the border, tiers not offered here. */
export function notesOf(scene: Scene): readonly string[] {
  const { format, kit, worth } = scene;
  const rates = ratesByDay(ratesUsed(scene), format);
  const offered = new Set(worth.tiers.map(({ tier }) => tier));
  const missing = (kit.tiers ?? []).filter(({ id }) => !offered.has(id)).map(tierName);
  return [
    [
      ...(rates.length === 0 ? [words.noRate] : []),
      ...rates.map(({ text, date }) => words.rate(text, format.date(date))),
      ...(scene.staleRates ? [words.stale] : []),
    ].join(" "),
    [originNote(scene), borderNote(scene)].filter((text) => text !== null).join(" "),
    ...(missing.length > 0 && offered.size > 0 ? [words.notOffered(missing)] : []),
  ];
}
