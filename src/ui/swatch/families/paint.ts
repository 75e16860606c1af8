import type { Lab } from "../../../engine/colour/index.ts";
import type { SupplyOf } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import type { Page } from "../page.ts";
import type { Point } from "../path.ts";
import { bodyShape, drawOpaque } from "./opaque.ts";
import { drawWash, washShape } from "./wash.ts";

/** Watercolour and drawing ink as paint are laid as a wash, everything else with a loaded brush. */
const isWash = (supply: SupplyOf<"paint">) =>
  supply.traits?.medium === "watercolour" || supply.traits?.medium === "ink";

export const drawPaint = (supply: SupplyOf<"paint">, colour: Lab, page: Page): Mark[] =>
  isWash(supply) ? drawWash(supply, colour, page) : drawOpaque(supply, colour, page);

export const paintShape = (supply: SupplyOf<"paint">, page: Page): Point[][] => [
  isWash(supply) ? washShape(page) : bodyShape({ ...page, level: "gesture" }),
];
