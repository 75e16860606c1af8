import type { Verdict } from "../../../engine/worth/index.ts";
import { judgeWanted } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { isLeast, nameInSentence, type Scene, tierName, tierOf } from "./scene.ts";

const words = worthWords.finding;

type Judged = Readonly<{ tier: string; verdict: Verdict; hangsOn: string | null }>;

/** The tiers of one way to count, by name, sorted by whether they pay. */
type Side = Readonly<{
  ahead: readonly string[];
  behind: readonly string[];
  hangs: readonly string[];
  /** The lines that the undecided ones hang on, each once. */
  items: readonly string[];
  all: number;
}>;

function sideOf(scene: Scene, judged: readonly Judged[]): Side {
  const names = (verdict: Verdict) =>
    judged.filter((one) => one.verdict === verdict).map(({ tier }) => tierName(tierOf(scene, tier)));
  const lines = new Set(judged.flatMap(({ hangsOn }) => hangsOn ?? []));
  return {
    ahead: names("ahead"),
    behind: names("behind"),
    hangs: names("hangs"),
    items: [...lines].map((id) => nameInSentence(scene, id)),
    all: judged.length,
  };
}

const isEvery = (side: Side): boolean => side.ahead.length === side.all;

/** The end of "By list price it …". */
function said(side: Side): string {
  if (isEvery(side)) return side.all === 1 ? words.sayPays : words.sayEvery;
  if (side.ahead.length > 0) return words.sayWith(side.ahead);
  return side.items.length > 0 ? words.sayHangs(side.items) : words.sayNot;
}

function leadOf({ market, worth }: Scene, list: Side, street: Side): string {
  const { name } = market;
  if (isEvery(street)) {
    if (street.all === 1) return words.one(name);
    return isEvery(list) ? words.every(name) : words.everyShop(name);
  }
  if (street.ahead.length > 0) return words.with(name, street.ahead);
  if (street.items.length > 0 && worth.unpriced.length > 1)
    return words.unpricedHangs(name, worth.unpriced.length);
  if (street.items.length > 0) return words.hangs(name, street.items);
  return words.never(name, street.all);
}

/** What the lead left open: the tiers that do not pay or hang on something. */
function restOf(street: Side): readonly string[] {
  const decided = street.ahead.length > 0;
  return [
    ...(street.hangs.length > 0 && decided ? [words.hangsWith(street.hangs, street.items)] : []),
    ...(street.behind.length > 0 && street.behind.length < street.all ? [words.notWith(street.behind)] : []),
  ];
}

/** The page's finding in a sentence, and what goes with it. */
export type Finding = Readonly<{ lead: string; more: string }>;

/** Whether it pays, where and on which tiers: at shop prices first, then by list price and by what is wanted. */
export function findingOf(scene: Scene): Finding {
  const { worth, format, market } = scene;
  if (worth.lines.every(({ list, street }) => list === null && street === null)) {
    return { lead: words.noPrices(market.name), more: words.noPricesMore };
  }
  const least = isLeast(scene) ? [words.atLeast(worth.unpriced.length)] : [];
  if (worth.tiers.length === 0) {
    const lead = words.noTiers(market.name, format.money(worth.streetTotal));
    return { lead, more: least.join(" ") };
  }
  const side = (judge: (tier: Scene["worth"]["tiers"][number]) => Omit<Judged, "tier">) =>
    sideOf(
      scene,
      worth.tiers.map((tier) => ({ tier: tier.tier, ...judge(tier) })),
    );
  const list = side(({ listVerdict: verdict, listHangsOn: hangsOn }) => ({ verdict, hangsOn }));
  const street = side(({ streetVerdict: verdict, streetHangsOn: hangsOn }) => ({ verdict, hangsOn }));
  const wanted = side((tier) => judgeWanted(scene.why.lines, tier.kitCost));
  const more = [
    ...restOf(street),
    ...(said(list) === said(street) ? [] : [words.byList(said(list))]),
    ...(said(wanted) === said(street) ? [] : [words.wanted(said(wanted))]),
    ...least,
  ];
  return { lead: leadOf(scene, list, street), more: more.join(" ") };
}
