/**
 * Match: which stash item plays which kit item's part, how well, and why.
 *
 * Units    likeness and certainty 0 to 1, four decimals (worked with as whole ten-thousandths); ΔE00; millimetres.
 * Sources  Gower 1971 (likeness), Jonker & Volgenant 1987 (assignment), ISO 216 (cutting tolerance). The weights
 *          and factors are common practice, in `table.ts` and docs/likeness.md.
 * Not here When two supplies are one product: `supply/`. What it is worth: `worth/`.
 */
export type { MatchKit } from "./board.ts";
export { type CoverageInput, type Covered, coverage } from "./coverage.ts";
export { type Cut, cutSentence } from "./cut.ts";
export { likenessDoc } from "./doc.ts";
export { familyLabel, traitLabel } from "./labels.ts";
export {
  type Candidate,
  type KitMatch,
  keepPalette,
  type LineMatch,
  type MatchInput,
  matchKit,
  type PickResult,
} from "./matchKit.ts";
export type { Palette } from "./palette.ts";
export { type Reasoned, reasonLine } from "./reason.ts";
export type { LeftOut, MatchRemake } from "./rules.ts";
export * from "./schema.ts";
export { builtInWeights } from "./table.ts";
export type { TraceRow } from "./trace.ts";
export { type Nearness, verdictWords } from "./verdict.ts";
