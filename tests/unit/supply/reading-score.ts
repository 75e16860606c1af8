import type { Language } from "../../../src/engine/record/index.ts";
import { type LineReading, readLine } from "../../../src/engine/supply/index.ts";

/** A written line with its right reading, judged by a person before any program read it. */
export type Judged = Readonly<{
  line: string;
  /** Makers and their lines that the workbook is said to know. */
  makers?: readonly string[];
  series?: readonly string[];
  family: string;
  qty?: number;
  maker?: string;
  of?: string;
  traits?: Readonly<Record<string, unknown>>;
  colour?: string;
  /** As "4.90 €": the amount with a point, and the sign of the currency. */
  price?: string;
  /** The words that stand for nothing the format has a field for. */
  left?: string;
}>;

export type Score = Readonly<{
  lines: number;
  /** Parts that the judge and the reader found alike, only the judge, only the reader. */
  both: number;
  missed: readonly string[];
  wrong: readonly string[];
}>;

/** Words that say nothing by themselves: whether they are left over or not is no mistake. */
const small = new Set(
  `a an the of in on with w and for per each ea at plus tip tips set pack kit box tin says
   en ett och med i på för av till från om à st styck spets färg sats förpackning ask etui`.split(/\s+/),
);

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}.,/]+/u)
    .map((word) => word.replace(/^[.,/]+|[.,/]+$/g, ""))
    .filter((word) => word !== "" && !small.has(word));

const figure = (value: unknown): string => (typeof value === "number" ? value.toFixed(2) : String(value));

const traitParts = (traits: Readonly<Record<string, unknown>>): readonly string[] =>
  Object.entries(traits).flatMap(([name, value]) => {
    if (!Array.isArray(value)) return [`${name} ${figure(value)}`];
    return name === "size"
      ? [`size ${value.map(figure).join(" × ")}`]
      : value.map((one) => `${name} ${figure(one)}`);
  });

const partsOf = (said: Omit<Judged, "line">): readonly string[] => [
  `family ${said.family}`,
  ...((said.qty ?? 1) === 1 ? [] : [`qty ${said.qty}`]),
  ...(said.maker ? [`maker ${said.maker}`] : []),
  ...(said.of ? [`line ${said.of}`] : []),
  ...traitParts(said.traits ?? {}),
  ...(said.colour ? [`colour ${said.colour.toLowerCase()}`] : []),
  ...(said.price ? [`price ${said.price}`] : []),
  ...(said.family === "other" ? [] : wordsOf(said.left ?? "").map((word) => `left ${word}`)),
];

const asJudged = ({ supply, qty, leftover, price }: LineReading): Omit<Judged, "line"> => ({
  family: supply.family,
  qty,
  ...(supply.maker ? { maker: supply.maker } : {}),
  ...(supply.line ? { of: supply.line } : {}),
  traits: supply.traits ?? {},
  ...(supply.colour?.name ? { colour: supply.colour.name } : {}),
  ...(price ? { price: `${price.amount} ${price.sign}` } : {}),
  left: leftover.join(" "),
});

/** How a reading compares with the judge's, part by part. */
export function scoreOf(judged: readonly Judged[], language: Language): Score {
  const each = judged.map(({ line, makers = [], series = [], ...said }) => {
    const right = [...partsOf(said)];
    const read = partsOf(asJudged(readLine(line, { makers, lines: series, prices: true }, language)));
    const wrong: string[] = [];
    for (const part of read) {
      const at = right.indexOf(part);
      if (at < 0) wrong.push(`${line}: ${part}`);
      else right.splice(at, 1);
    }
    return { both: read.length - wrong.length, wrong, missed: right.map((part) => `${line}: ${part}`) };
  });
  return {
    lines: judged.length,
    both: each.reduce((sum, { both }) => sum + both, 0),
    missed: each.flatMap(({ missed }) => missed),
    wrong: each.flatMap(({ wrong }) => wrong),
  };
}

/** Of the parts that are there, the share that is found; of those found, the share that is there. */
export const recall = ({ both, missed }: Score): number => both / (both + missed.length);
export const precision = ({ both, wrong }: Score): number => both / (both + wrong.length);
