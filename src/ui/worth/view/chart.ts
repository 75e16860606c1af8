import type { Money } from "../../../engine/money/index.ts";
import type { PricedLine } from "../../../engine/price/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import type { LineWorth } from "../../../engine/worth/index.ts";
import { wantedOf, wantedRange } from "../../../engine/worth/index.ts";
import { worthWords } from "../../words/worth.ts";
import { isLeast, lineNumber, type Scene, tierName, tierOf } from "./scene.ts";

const words = worthWords.chart;

export type RowKey = "list" | "street" | "wanted";

/** One line's piece of a row. `value` is only drawn with, never printed. */
export type Piece = Readonly<{
  number: number;
  item: Readonly<{ id: string; supply: Supply }>;
  qty: number;
  value: number;
}>;

/** One row: its pieces laid end to end, and how far the total may be off. */
export type ChartRow = Readonly<{
  key: RowKey;
  name: string;
  amount: string;
  pieces: readonly Piece[];
  total: number;
  low: number;
  high: number;
}>;

export type ChartTier = Readonly<{ id: string; name: string; amount: string; cost: number }>;

/** What the picture shows, before it has a size. `text` says the same to those who do not see it. */
export type Chart = Readonly<{
  rows: readonly ChartRow[];
  tiers: readonly ChartTier[];
  caption: string;
  text: string;
}>;

// Lengths in a drawing may be off by a billionth; amounts never are, they are printed from decimal text.
const drawn = ({ amount }: Money): number => Number(amount);

function piecesOf(
  scene: Scene,
  amountOf: (line: PricedLine, worth: LineWorth) => Money | null,
): readonly Piece[] {
  return scene.why.lines.flatMap((priced, index) => {
    const worth = scene.worth.lines[index];
    const value = worth ? amountOf(priced, worth) : null;
    if (!value || drawn(value) === 0) return [];
    const { line, qty } = priced;
    const item = { id: `${scene.kit.id}/${line.id}`, supply: line.supply };
    return [{ number: lineNumber(scene, line.id), item, qty, value: drawn(value) }];
  });
}

type Sums = Readonly<{ total: Money; low: Money; high: Money }>;

function rowOf(scene: Scene, key: RowKey, sums: Sums, pieces: readonly Piece[]): ChartRow {
  const amount = scene.format.amount(sums.total);
  return {
    key,
    name: words.rows[key],
    amount: isLeast(scene) ? worthWords.lines.least(amount) : amount,
    pieces,
    total: drawn(sums.total),
    low: drawn(sums.low),
    high: drawn(sums.high),
  };
}

function textOf(scene: Scene, sums: Readonly<Record<RowKey, Sums>>, tiers: readonly ChartTier[]): string {
  const { format } = scene;
  const rows = (["list", "street", "wanted"] as const).map((key) => {
    const { total, low, high } = sums[key];
    const range = low.amount === high.amount ? "" : words.range(format.money(low), format.money(high));
    return words.row(words.rows[key], format.money(total), range);
  });
  return words.text(rows.join(" "), tiers.map(({ name, amount }) => words.tier(name, amount)).join("; "));
}

/** The kit laid end to end in money: by list, by shop price, and only what would be used, beside each tier. */
export function chartOf(scene: Scene): Chart {
  const { worth, format } = scene;
  const sums = {
    list: { total: worth.listTotal, low: worth.listLow, high: worth.listHigh },
    street: { total: worth.streetTotal, low: worth.streetLow, high: worth.streetHigh },
    wanted: { total: worth.wantedTotal, ...wantedRange(worth.currency, scene.why.lines) },
  };
  const tiers = worth.tiers.map((tier) => ({
    id: tier.tier,
    name: tierName(tierOf(scene, tier.tier)),
    amount: format.amount(tier.kitCost),
    cost: drawn(tier.kitCost),
  }));
  return {
    rows: [
      rowOf(
        scene,
        "list",
        sums.list,
        piecesOf(scene, (_, line) => line.list),
      ),
      rowOf(
        scene,
        "street",
        sums.street,
        piecesOf(scene, (_, line) => line.street),
      ),
      rowOf(
        scene,
        "wanted",
        sums.wanted,
        piecesOf(scene, (line) => wantedOf(line, "likely")),
      ),
    ],
    tiers,
    caption: words.caption(worth.currency),
    text: textOf(scene, sums, tiers),
  };
}
