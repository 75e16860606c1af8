import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import type { Page } from "../page.ts";
import { hatch, type Lead } from "./hatch.ts";

/** How each binder lays down: oil close and smooth, pastel broad and broken. Common practice, no source. */
const leads: Readonly<Record<"wax" | "oil" | "soluble" | "pastel", Lead>> = {
  wax: { width: 2, pitch: 3, tooth: 14, soft: 0.5 },
  oil: { width: 2.5, pitch: 3, tooth: 7, soft: 0.42 },
  soluble: { width: 1.7, pitch: 3.2, tooth: 13, soft: 0.55 },
  pastel: { width: 2.9, pitch: 3.8, tooth: 19, soft: 0.5 },
};

export const drawColourPencil = (supply: SupplyOf<"colour-pencil">, colour: Lab, page: Page): Mark[] =>
  hatch(colour, leads[supply.traits?.binder ?? "wax"], page);
