import type { Lab } from "../../../engine/colour/index.ts";
import { gradeRank, grades, type SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import type { Page } from "../page.ts";
import { lab } from "../shade.ts";
import { hatch, type Lead } from "./hatch.ts";

type Core = "graphite" | "charcoal" | "carbon" | "soluble";

/** 0 for 10H, 1 for 10B; HB, in the middle, where no grade is given. */
function softness(grade: string | null | undefined): number {
  const rank = gradeRank(grade ?? "HB") ?? 0;
  return rank / (grades.length - 1);
}

/** The value a grade reaches pressed firmly on white paper. Common practice, no source. */
function toneOf(core: Core, soft: number): Lab {
  if (core === "charcoal") return lab(27 - 8 * soft, 0.2, 0.8);
  if (core === "carbon") return lab(30 - 12 * soft, 0, -0.3);
  return lab(72 - 48 * soft, -0.6, -1.4);
}

function leadOf(core: Core, soft: number): Lead {
  const broad = core === "charcoal" ? 1.5 : core === "carbon" ? 1.15 : 1;
  return {
    width: broad * (1.05 + 1.7 * soft),
    pitch: broad * (3.3 - 0.4 * soft),
    tooth: (core === "charcoal" ? 10 : 0) + 4 + 16 * soft,
    soft: 0.62 - 0.25 * soft,
  };
}

/** Pencils of grey: the grade alone tells value, width and tooth; a colour, where known, comes first. */
export function drawGraphite(supply: SupplyOf<"graphite">, colour: Lab | null, page: Page): Mark[] {
  const core = supply.traits?.core ?? "graphite";
  const soft = softness(supply.traits?.grade);
  return hatch(colour ?? toneOf(core, soft), leadOf(core, soft), page);
}
