import type { Lab } from "../../../engine/colour/index.ts";
import { type SheetMm, type SupplyOf, sheetMm } from "../../../engine/supply/index.ts";
import type { Mark } from "../drawing.ts";
import { grain, type Page, times, within } from "../page.ts";
import { type Box, dash, ellipse, polygon, rectangle } from "../path.ts";
import { hex, lab, mix, shade } from "../shade.ts";

/** Proportion of a sheet whose size is not known. */
const anySheet: SheetMm = [210, 297];

/** The sheet's short and long side in mm, or null when its size is not known. */
export const sheetOf = (supply: SupplyOf<"paper">): SheetMm | null => sheetMm(supply.traits?.size);

const white = lab(98.4, -0.1, 1.6);
const boardTone = lab(87, -2, 2);

/** Tooth marks to 1,000 square px. */
const tooth = { smooth: 0, medium: 9, rough: 22 } as const;

/** Thickness of the stack in px at 180 px of height: one sheet by its weight, a pad by all of them. */
function thickness(supply: SupplyOf<"paper">, page: Page): number {
  const traits = supply.traits;
  const gsm = traits?.gsm ?? 120;
  const sheets = isStack(supply) ? (traits?.sheets ?? 20) : 1;
  const px = sheets === 1 ? gsm / 110 : 4 + Math.sqrt(sheets * gsm) / 5.5;
  return Math.min(0.13 * page.height, (px * page.height) / 180);
}

const isStack = (supply: SupplyOf<"paper">) =>
  supply.traits?.bound !== "loose" && ((supply.traits?.sheets ?? 1) > 1 || Boolean(supply.traits?.bound));

const isTurned = (page: Page) => page.box.w > page.box.h;

/** How many px a mm may have for this sheet to fit the page. */
export function fitOf(supply: SupplyOf<"paper">, page: Page): number {
  const [short, long] = sheetOf(supply) ?? anySheet;
  const room = thickness(supply, page);
  const [w, h] = isTurned(page) ? [long, short] : [short, long];
  return Math.min((page.box.w - room) / w, (page.box.h - room) / h);
}

/** Where the sheet lies, in the middle of the page; its stack shows to the right and below. */
export function sheetBox(supply: SupplyOf<"paper">, page: Page, perMm: number): Box {
  const [short, long] = sheetOf(supply) ?? anySheet;
  const [w, h] = isTurned(page) ? [long * perMm, short * perMm] : [short * perMm, long * perMm];
  return { x: (page.width - w) / 2, y: (page.height - h - thickness(supply, page)) / 2, w, h };
}

/** The stack's two visible sides. */
function sides(sheet: Box, deep: number, slip: number): string {
  const [right, foot] = [sheet.x + sheet.w, sheet.y + sheet.h];
  return polygon([
    [right, sheet.y],
    [right + deep * 0.62, sheet.y + slip],
    [right + deep * 0.62, foot + deep],
    [sheet.x + deep * 0.62, foot + deep],
    [sheet.x, foot],
    [right, foot],
  ]);
}

/** Sheet lines along the sides: as many as can be told apart. */
function leaves(sheet: Box, deep: number, slip: number, count: number): string {
  return times(count, (i) => {
    const t = (i + 1) / (count + 1);
    const [dx, dy] = [0.62 * deep * t, deep * t];
    const [right, foot] = [sheet.x + sheet.w, sheet.y + sheet.h];
    return `${dash(sheet.x + dx, foot + dy, sheet.w, 0)}${dash(right + dx, sheet.y + slip * t, 0, foot + dy - sheet.y - slip * t)}`;
  }).join("");
}

function toothMarks(supply: SupplyOf<"paper">, sheet: Box, page: Page): string {
  const { random } = page;
  const per = tooth[supply.traits?.surface ?? "smooth"];
  const fine = grain(page);
  const rough = supply.traits?.surface === "rough" ? 1.4 : 1;
  return times(Math.min(700, (per * sheet.w * sheet.h) / 1000 / fine), () => {
    const x = sheet.x + sheet.w * within(random, 0.015, 0.985);
    const y = sheet.y + sheet.h * within(random, 0.015, 0.985);
    return dash(x, y, rough * fine * within(random, 0.3, 1.8), fine * within(random, -0.6, 0.6));
  }).join("");
}

function binding(supply: SupplyOf<"paper">, sheet: Box, tone: Lab, page: Page): Mark[] {
  const bound = supply.traits?.bound ?? (isStack(supply) ? "pad" : "loose");
  const dark = hex(shade(tone, -45));
  const r = 0.011 * page.height;
  if (bound === "pad") {
    const count = Math.max(4, Math.round(sheet.w / (7.5 * r)));
    const holes = times(count, (i) => ellipse(sheet.x + (sheet.w * (i + 0.5)) / count, sheet.y + 2.6 * r, r));
    return [{ d: holes.join(""), fill: dark }];
  }
  if (bound === "book") return [{ d: rectangle({ ...sheet, w: 0.055 * sheet.w }), fill: dark }];
  if (bound === "block") {
    const tape = rectangle({ ...sheet, h: 2.4 * r }) + rectangle({ ...sheet, w: 2.4 * r });
    return [{ d: tape, fill: hex(shade(tone, -22)) }];
  }
  return [];
}

/** Weave of canvas: threads over and under. */
function weave(sheet: Box, page: Page): string {
  const pitch = 3.4 * grain(page);
  const rows = times(sheet.h / pitch - 1, (i) => dash(sheet.x, sheet.y + pitch * (i + 1), sheet.w, 0));
  const threads = times(sheet.w / pitch - 1, (i) => dash(sheet.x + pitch * (i + 1), sheet.y, 0, sheet.h));
  return [...rows, ...threads].join("");
}

/**
 * A sheet in its true proportion, its edge as thick as its weight; pads and blocks show all their sheets.
 * @param perMm px to a mm, where sheets are compared; else the sheet fills the page
 */
export function drawPaper(
  supply: SupplyOf<"paper">,
  colour: Lab | null,
  page: Page,
  perMm = fitOf(supply, page),
): Mark[] {
  const plain = supply.traits?.use === "tracing" ? mix(white, boardTone, 0.45) : white;
  const tone = colour ?? plain;
  const sheet = sheetBox(supply, page, perMm);
  const deep = Math.max(0.6, thickness(supply, page));
  const slip = isStack(supply) ? 1.5 * deep : Math.min(deep, 2);
  const edge = hex(mix(shade(tone, -24), lab(52), 0.25));
  const stack: Mark = { d: sides(sheet, deep, slip), fill: hex(shade(tone, isStack(supply) ? -17 : -22)) };
  const face: Mark = { d: rectangle(sheet), fill: hex(tone), stroke: edge, strokeWidth: 0.7 };
  if (page.level === "gesture") return [stack, face];
  const marks: Mark[] = [stack];
  if (isStack(supply)) {
    const lines = Math.min((supply.traits?.sheets ?? 20) - 1, Math.floor(deep / 2.4));
    marks.push({ d: leaves(sheet, deep, slip, lines), stroke: hex(shade(tone, -34)), strokeWidth: 0.7 });
  }
  marks.push(face);
  if (supply.traits?.use === "canvas")
    marks.push({ d: weave(sheet, page), stroke: hex(shade(tone, -4)), strokeWidth: 0.7 });
  const grains = toothMarks(supply, sheet, page);
  if (grains)
    marks.push({ d: grains, stroke: hex(shade(tone, -16)), strokeWidth: 0.65 * grain(page), round: true });
  return [...marks, ...binding(supply, sheet, tone, page)];
}
