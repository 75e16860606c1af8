import { PalettePicture } from "../palette/palette-picture.tsx";
import { Section } from "../parts/index.ts";
import { Chart } from "../worth/chart.tsx";
import type { ChartRow, Chart as ChartView } from "../worth/view/chart.ts";
import { pairExamples } from "./examples.ts";
import { sheet } from "./sheet-words.ts";

const texts = sheet.pictures;

const prices = [59.5, 66, 54, 29, 22, 36, 20] as const;

/** One row: the examples laid end to end, at so much of their price. */
const rowOf = (key: ChartRow["key"], share: number, off: number): ChartRow => {
  const pieces = prices.flatMap((price, index) => {
    const supply = pairExamples[index]?.kit;
    return supply
      ? [{ number: index + 1, item: { id: supply.name, supply }, qty: 1, value: price * share }]
      : [];
  });
  const total = pieces.reduce((sum, { value }) => sum + value, 0);
  return {
    key,
    name: texts[key],
    amount: total.toFixed(2),
    pieces,
    total,
    low: total * (1 - off),
    high: total * (1 + off),
  };
};

const chart: ChartView = {
  rows: [rowOf("list", 1, 0.08), rowOf("street", 0.84, 0.04), rowOf("wanted", 0.69, 0.06)],
  tiers: [{ id: "month", name: texts.tier, amount: "214.60", cost: 214.6 }],
  caption: texts.caption,
  text: texts.text,
};

const played = pairExamples.map(({ kit, standIn }, index) => ({
  line: kit.name,
  number: index + 1,
  name: kit.name,
  supply: kit,
  state: standIn ? ("filled" as const) : ("gap" as const),
  standIn: standIn && { name: standIn.name, item: { supply: standIn } },
}));

/** The two pictures that are made of figures: the kit laid end to end in money, and its palette. */
export function Pictures() {
  return (
    <>
      <Section title={texts.title} note={texts.note}>
        <Chart chart={chart} />
      </Section>
      <PalettePicture rows={played} />
    </>
  );
}
