import { labOf } from "../../../engine/colour/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { hasColour } from "../../supply-form/view/trait-fields.ts";
import { factsOf } from "../../words/engine/supply.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { type Told, toldOf } from "./claims.ts";

const words = kitsWords.contents;

/** One line of the contents, ready to print. */
export type LineRow = Readonly<{
  line: Line;
  number: number;
  swatch: Readonly<{ id: string; supply: Supply }>;
  name: string;
  facts: string;
  told: Told;
  /** What the maker put right later. */
  corrections: readonly string[];
}>;

export type ContentsView = Readonly<{ lead: string; leadMore: string; rows: readonly LineRow[] }>;

/** The facts of a supply as one text, numbers in the reader's own format. */
export const factsText = (supply: Supply, format: Formatter = ownFormat): string =>
  factsOf(supply, (value) => format.number(value, 3)).join(", ");

/** A fraction as decimal text, in hundredths: "0.5" is "50". */
const outOf100 = (want: string, format: Formatter): string => format.number(Number(want) * 100, 0);

function wantFact(want: string | null | undefined, format: Formatter): readonly string[] {
  if (want === null || want === undefined || Number(want) === 1) return [];
  return [Number(want) === 0 ? words.wantNone : words.wantSome(outOf100(want, format))];
}

const lineFacts = (line: Line, format: Formatter): string =>
  [
    ...((line.qty ?? 1) > 1 ? [words.times(line.qty ?? 1)] : []),
    factsText(line.supply, format),
    ...(line.exclusive ? [words.exclusive] : []),
    ...wantFact(line.want, format),
  ]
    .filter((fact) => fact !== "")
    .join(", ");

const correctionsOf = (kit: Kit, line: Line, format: Formatter): readonly string[] =>
  (kit.errata ?? [])
    .filter(({ lines, text }) => text && (lines ?? []).includes(line.id))
    .map(({ date, text }) =>
      words.corrected(date ? format.date(date) : kitsWords.prices.undated, text ?? ""),
    );

/** A kit's lines with who says so, and what is still doubtful about them. */
export function contentsView(kit: Kit, format: Formatter = ownFormat): ContentsView {
  const rows = (kit.lines ?? []).map(
    (line, index): LineRow => ({
      line,
      number: index + 1,
      swatch: { id: `${kit.id}/${line.id}`, supply: line.supply },
      name: line.supply.name,
      facts: lineFacts(line, format),
      told: toldOf(line),
      corrections: correctionsOf(kit, line, format),
    }),
  );
  const differ = rows.filter(({ told }) => told.differs).length;
  const bare = rows.filter(({ line: { supply } }) => needsColour(supply)).length;
  return {
    lead: rows.length === 0 ? words.leadNone : words.lead(rows.length),
    leadMore: [
      ...(differ > 0 ? [words.doubt(differ)] : []),
      ...(bare > 0 ? [words.noColour(bare)] : []),
    ].join(" "),
    rows,
  };
}

/** A coloured thing without its colour. Graphite is grey, and paper mostly white, without anybody saying so. */
export const needsColour = (supply: Supply): boolean =>
  hasColour(supply.family) &&
  supply.family !== "graphite" &&
  supply.family !== "paper" &&
  labOf(supply.colour) === null;
