import { type Money, sumMoney } from "../../../engine/money/index.ts";
import type { TierWorth, Verdict } from "../../../engine/worth/index.ts";
import { judgeWanted } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { type Making, makingOf } from "./making.ts";
import { chargesOf, isCharged } from "./notes.ts";
import { isLeast, lineName, type Scene, tierName, tierOf } from "./scene.ts";

const words = worthWords.tiers;

/** What a tier brings by one way of counting: the amount with its sign, and whether it pays. */
export type Gain = Readonly<{ amount: string; verdict: Verdict; word: string }>;

/** One tier's row, ready to print; amounts without their currency, which the heading names. */
export type TierRow = Readonly<{
  id: string;
  name: string;
  fact: string;
  goods: string;
  postage: string;
  border: string;
  cost: string;
  list: Gain;
  street: Gain;
  wanted: Gain;
  making: Making;
}>;

function gainOf(scene: Scene, gain: Money, verdict: Verdict, hangsOn: string | null): Gain {
  const word = { ahead: words.pays, behind: words.not, hangs: words.hangs(lineName(scene, hangsOn ?? "")) };
  const least = isLeast(scene) ? `${words.least} ` : "";
  return { amount: `${least}${scene.format.amount(gain, "always")}`, verdict, word: word[verdict] };
}

function rowOf(scene: Scene, worth: TierWorth): TierRow {
  const { format } = scene;
  const tier = tierOf(scene, worth.tier);
  const wanted = judgeWanted(scene.why.lines, worth.kitCost);
  return {
    id: worth.tier,
    name: tierName(tier),
    fact: tier ? words.payment(format.money(tier.price), tier.kits) : "",
    goods: format.amount(worth.goods),
    postage: format.amount(worth.postage),
    border: isCharged(worth) ? format.amount(sumMoney(worth.kitCost.currency, chargesOf(worth))) : words.none,
    cost: format.amount(worth.kitCost),
    list: gainOf(scene, worth.listGain, worth.listVerdict, worth.listHangsOn),
    street: gainOf(scene, worth.streetGain, worth.streetVerdict, worth.streetHangsOn),
    wanted: gainOf(scene, worth.wantedGain, wanted.verdict, wanted.hangsOn),
    making: makingOf(scene, worth),
  };
}

/** The tiers offered in the market, in the kit's order. */
export const tierRows = (scene: Scene): readonly TierRow[] =>
  scene.worth.tiers.map((tier) => rowOf(scene, tier));
