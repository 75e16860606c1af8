import type { InEvery } from "../../../record/index.ts";
import { chartFaults as en } from "./en.ts";
import { chartFaults as sv } from "./sv.ts";

export type ChartFault = keyof typeof en;
export type ChartFaults = typeof en;

/** What can be wrong with a photo of a chart, by language. */
export const chartFaultsIn: InEvery<ChartFaults> = { en, sv };

/** The part of what was said that each of them is about. */
export const chartPlaces: Readonly<Record<ChartFault, string>> = {
  "broken-photo": "photo",
  "no-rows": "rows",
  "no-columns": "columns",
  "many-rows": "rows",
  "many-columns": "columns",
  "corner-outside": "corners",
  "corners-cross": "corners",
  "too-small": "corners",
  "spot-outside": "paper",
  "wrong-gap": "gap",
  "dark-white": "white",
  "too-bright": "photo",
  "no-paper": "paper",
};
