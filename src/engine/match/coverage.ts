import type { Kinship, StashItem } from "../supply/index.ts";
import { boardOf, type MatchKit } from "./board.ts";
import { unitsPerOne } from "./likeness.ts";
import type { Weights } from "./schema.ts";
import { byCodeUnits, type Shelf, shelfOf } from "./shelf.ts";

/** How well the stash makes up one kit. A gap counts 0; `worst` is null for a kit without lines. */
export type Covered = Readonly<{
  kit: string;
  gaps: number;
  meanLikeness: number;
  worst: Readonly<{ line: string; likeness: number }> | null;
}>;

export type CoverageInput = Readonly<{
  kits: readonly MatchKit[];
  stash: readonly StashItem[];
  kinships?: readonly Kinship[] | null | undefined;
  weights?: Weights | null | undefined;
}>;

function coverOne(kit: MatchKit, shelf: Shelf, weights: Weights | null): Covered {
  const { lines } = boardOf(kit, shelf, weights, null);
  const units = lines.map(({ line, played }) => ({ line, units: played?.scored.units ?? 0 }));
  const total = units.reduce((sum, one) => sum + one.units, 0);
  const [worst] = units.toSorted((a, b) => a.units - b.units);
  return {
    kit: kit.id,
    gaps: lines.filter(({ played }) => !played).length,
    meanLikeness: units.length > 0 ? Math.round(total / units.length) / unitsPerOne : 0,
    worst: worst ? { line: worst.line, likeness: worst.units / unitsPerOne } : null,
  };
}

/** Every kit by how well the stash makes it up, best first: by the mean likeness as printed, then by id. */
export function coverage({ kits, stash, kinships, weights }: CoverageInput): readonly Covered[] {
  if (kits.length === 0) return []; // a stash of thousands takes its time to be made ready
  const shelf = shelfOf(stash, kinships ?? []);
  return kits
    .map((kit) => coverOne(kit, shelf, weights ?? null))
    .toSorted((a, b) => b.meanLikeness - a.meanLikeness || byCodeUnits(a.kit, b.kit));
}
