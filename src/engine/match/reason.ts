import { labOf, missWords } from "../colour/index.ts";
import { figureIn, type Language } from "../record/index.ts";
import { gradeRank, type StashItem, type Supply, sheetMm } from "../supply/index.ts";
import type { Cut } from "./cut.ts";
import { sizeCredit } from "./cut.ts";
import { familyLabel, traitLabel } from "./labels.ts";
import { roles } from "./table.ts";
import type { TraceRow } from "./trace.ts";
import type { Nearness } from "./verdict.ts";
import { type MatchWords, wordsIn } from "./words/index.ts";

/** As much of a candidate as its reason is drawn from. */
export type Reasoned = Readonly<{
  verdict: Nearness;
  deltaE00: number | null;
  adaptation: Cut | null;
  trace: readonly TraceRow[];
}>;

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** The language a reason is given in, and its words. */
type Speech = Readonly<{ language: Language; words: MatchWords }>;

const tied: Readonly<Partial<Record<Nearness, "sameProduct" | "twin" | "sameColour">>> = {
  same: "sameProduct",
  twin: "twin",
  "same-colour": "sameColour",
};

const otherFamily = (kit: Supply, stash: Supply, { language, words }: Speech): string | null =>
  kit.family === stash.family
    ? null
    : words.insteadOf(familyLabel(stash.family, language), familyLabel(kit.family, language));

/** "3.0 apart, a little darker", where colour counts between the two; of equal colours, what else differs. */
function colourReason(kit: Supply, stash: Supply, candidate: Reasoned, speech: Speech): string | null {
  const { language, words } = speech;
  const { deltaE00, trace } = candidate;
  const [own, other] = [labOf(kit.colour), labOf(stash.colour)];
  if (deltaE00 === null || !own || !other || !trace.some(({ trait }) => trait === "colour")) return null;
  if (deltaE00 < 0.05) return [words.noDifference, traitReason(candidate, speech)].filter(Boolean).join("; ");
  const apart = words.apart(figureIn(deltaE00.toFixed(1), language));
  return [apart, ...missWords(own, other, language).slice(0, 1)].join(", ");
}

/** "two grades softer". */
function gradeReason(kit: Supply, stash: Supply, { words }: Speech): string | null {
  if (kit.family !== "graphite" || stash.family !== "graphite") return null;
  const [from, to] = [gradeRank(kit.traits?.grade ?? ""), gradeRank(stash.traits?.grade ?? "")];
  if (from === null || to === null || from === to) return null;
  return to > from ? words.softer(to - from) : words.harder(from - to);
}

/** "larger: cut down, two pieces a sheet", or how much of the kit's sheet a smaller one covers. */
function sheetReason(kit: Supply, stash: Supply, { adaptation }: Reasoned, { words }: Speech): string | null {
  if (adaptation) return words.cutDown(adaptation.pieces);
  if (kit.family !== "paper" || stash.family !== "paper") return null;
  const [own, other] = [sheetMm(kit.traits?.size), sheetMm(stash.traits?.size)];
  const covered = own && other ? sizeCredit(own, other) : 1;
  return covered < 1 ? words.covers(Math.round(covered * 100)) : null;
}

/** The trait that costs most likeness: "another tip" or "tip not known". */
function traitReason({ trace }: Reasoned, { language, words }: Speech): string | null {
  const lost = ({ similarity, weight }: TraceRow): number => weight * (1 - similarity);
  const [worst] = trace.filter(({ trait }) => trait !== "colour").toSorted((a, b) => lost(b) - lost(a));
  if (!worst || lost(worst) === 0) return null;
  const label = traitLabel(worst.trait, language);
  return worst.stash === null ? words.unknown(label) : words.differs(label);
}

/** What lays colour is judged by it first: that it is not known has to be said, whatever else is. */
function colourGap(kit: Supply, { trace, verdict }: Reasoned, { words }: Speech): string | null {
  const row = trace.find(({ trait }) => trait === "colour");
  if (row) return row.stash === null && verdict !== "same-colour" ? words.noColour : null;
  return roles[kit.family] === "lay colour" && !labOf(kit.colour) ? words.noKitColour : null;
}

/**
 * Why a candidate is as near as it is, in one plain line: "3.0 apart, a little darker", "Two grades softer",
 * "Sold under another label", "Larger: cut down, one piece a sheet".
 */
export function reasonLine(
  kit: Supply,
  item: StashItem,
  candidate: Reasoned,
  language: Language = "en",
): string {
  const { supply } = item;
  const words = wordsIn[language];
  const speech = { language, words };
  const tie = tied[candidate.verdict];
  if (tie && candidate.verdict !== "same-colour") return capital(words[tie]);
  const main =
    (tie && words[tie]) ??
    colourReason(kit, supply, candidate, speech) ??
    gradeReason(kit, supply, speech) ??
    sheetReason(kit, supply, candidate, speech) ??
    traitReason(candidate, speech) ??
    (candidate.trace.length > 0 ? words.allAgrees : words.littleKnown);
  const parts = [otherFamily(kit, supply, speech), main, colourGap(kit, candidate, speech)];
  return capital(parts.filter((part) => part !== null).join("; "));
}
