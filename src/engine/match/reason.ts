import { labOf, missWords } from "../colour/index.ts";
import { gradeRank, type StashItem, type Supply, sheetMm } from "../supply/index.ts";
import type { Cut } from "./cut.ts";
import { sizeCredit } from "./cut.ts";
import { familyLabel, traitLabel } from "./labels.ts";
import { roles } from "./table.ts";
import type { TraceRow } from "./trace.ts";
import type { Nearness } from "./verdict.ts";

/** As much of a candidate as its reason is drawn from. */
export type Reasoned = Readonly<{
  verdict: Nearness;
  deltaE00: number | null;
  adaptation: Cut | null;
  trace: readonly TraceRow[];
}>;

const numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const counted = (count: number, one: string, many: string): string =>
  `${numbers[count] ?? count} ${count === 1 ? one : many}`;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const tied: Readonly<Partial<Record<Nearness, string>>> = {
  same: "the very same product",
  twin: "sold under another label",
  "same-colour": "the same colour in another form",
};

const otherFamily = (kit: Supply, stash: Supply): string | null =>
  kit.family === stash.family ? null : `${familyLabel(stash.family)} instead of ${familyLabel(kit.family)}`;

/** "3.0 apart, a little darker", where colour counts between the two; of equal colours, what else differs. */
function colourReason(kit: Supply, stash: Supply, candidate: Reasoned): string | null {
  const { deltaE00, trace } = candidate;
  const [own, other] = [labOf(kit.colour), labOf(stash.colour)];
  if (deltaE00 === null || !own || !other || !trace.some(({ trait }) => trait === "colour")) return null;
  if (deltaE00 < 0.05) return ["no difference in colour", traitReason(candidate)].filter(Boolean).join("; ");
  return [`${deltaE00.toFixed(1)} apart`, ...missWords(own, other).slice(0, 1)].join(", ");
}

/** "two grades softer". */
function gradeReason(kit: Supply, stash: Supply): string | null {
  if (kit.family !== "graphite" || stash.family !== "graphite") return null;
  const [from, to] = [gradeRank(kit.traits?.grade ?? ""), gradeRank(stash.traits?.grade ?? "")];
  if (from === null || to === null || from === to) return null;
  return `${counted(Math.abs(to - from), "grade", "grades")} ${to > from ? "softer" : "harder"}`;
}

/** "larger: cut down, two pieces a sheet", or how much of the kit's sheet a smaller one covers. */
function sheetReason(kit: Supply, stash: Supply, { adaptation }: Reasoned): string | null {
  if (adaptation) return `larger: cut down, ${counted(adaptation.pieces, "piece", "pieces")} a sheet`;
  if (kit.family !== "paper" || stash.family !== "paper") return null;
  const [own, other] = [sheetMm(kit.traits?.size), sheetMm(stash.traits?.size)];
  const covered = own && other ? sizeCredit(own, other) : 1;
  return covered < 1 ? `smaller: covers ${Math.round(covered * 100)} of 100` : null;
}

/** The trait that costs most likeness: "another tip" or "tip not known". */
function traitReason({ trace }: Reasoned): string | null {
  const lost = ({ similarity, weight }: TraceRow): number => weight * (1 - similarity);
  const [worst] = trace.filter(({ trait }) => trait !== "colour").toSorted((a, b) => lost(b) - lost(a));
  if (!worst || lost(worst) === 0) return null;
  const label = traitLabel(worst.trait);
  return worst.stash === null ? `${label} not known` : `${label} differs`;
}

/** What lays colour is judged by it first: that it is not known has to be said, whatever else is. */
function colourGap(kit: Supply, { trace, verdict }: Reasoned): string | null {
  const row = trace.find(({ trait }) => trait === "colour");
  if (row) return row.stash === null && verdict !== "same-colour" ? "its colour is not known" : null;
  return roles[kit.family] === "lay colour" && !labOf(kit.colour) ? "the kit's colour is not known" : null;
}

/**
 * Why a candidate is as near as it is, in one plain line: "3.0 apart, a little darker", "Two grades softer",
 * "Sold under another label", "Larger: cut down, one piece a sheet".
 */
export function reasonLine(kit: Supply, item: StashItem, candidate: Reasoned): string {
  const { supply } = item;
  const known = tied[candidate.verdict];
  if (known && candidate.verdict !== "same-colour") return capital(known);
  const main =
    known ??
    colourReason(kit, supply, candidate) ??
    gradeReason(kit, supply) ??
    sheetReason(kit, supply, candidate) ??
    traitReason(candidate) ??
    (candidate.trace.length > 0 ? "all that is known agrees" : "little is known of it");
  return capital(
    [otherFamily(kit, supply), main, colourGap(kit, candidate)].filter((part) => part !== null).join("; "),
  );
}
