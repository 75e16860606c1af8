import type { Mark, Paint, PairDrawing, Surface, SwatchDrawing } from "./drawing.ts";

/** Tones for a drawing that leaves the app; null is not drawn. */
export type Surfaces = Readonly<Record<Surface, string | null>>;

/** As on the light page. */
export const lightSurfaces: Surfaces = {
  chip: "#fcfcf9",
  board: "#d7ddd5",
  edge: "#c6cec5",
  rule: "#76817a",
  seam: null,
};

/** As on the dark page: dimmed paper, without an edge. */
export const darkSurfaces: Surfaces = {
  chip: "#ecece5",
  board: "#bcc4bb",
  edge: null,
  rule: "#717d76",
  seam: null,
};

/** As printed: white paper, edge and seam in black. */
export const printSurfaces: Surfaces = {
  chip: "#ffffff",
  board: "#d7ddd5",
  edge: "#000000",
  rule: "#000000",
  seam: "#000000",
};

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

const escaped = (text: string) => text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

const attribute = (name: string, value: string | number | null | undefined) =>
  value === null || value === undefined ? "" : ` ${name}="${escaped(String(value))}"`;

const isSurface = (paint: Paint, surfaces: Surfaces): paint is Surface => Object.hasOwn(surfaces, paint);

const toneOf = (paint: Paint | undefined, surfaces: Surfaces): string =>
  paint === undefined ? "none" : isSurface(paint, surfaces) ? (surfaces[paint] ?? "none") : paint;

function path(mark: Mark, surfaces: Surfaces): string {
  const [fill, stroke] = [toneOf(mark.fill, surfaces), toneOf(mark.stroke, surfaces)];
  if (!mark.d || (fill === "none" && stroke === "none")) return "";
  const line = stroke !== "none";
  return [
    `<path${attribute("d", mark.d)}${attribute("fill", fill)}`,
    mark.evenOdd ? attribute("fill-rule", "evenodd") : "",
    line ? attribute("stroke", stroke) + attribute("stroke-width", mark.strokeWidth) : "",
    line && mark.round ? ' stroke-linecap="round" stroke-linejoin="round"' : "",
    line ? attribute("stroke-dasharray", mark.dash) : "",
    "/>",
  ].join("");
}

const paths = (marks: readonly Mark[], surfaces: Surfaces) =>
  marks.map((mark) => path(mark, surfaces)).join("");

const opened = (width: number, height: number) =>
  `<svg xmlns="http://www.w3.org/2000/svg"${attribute("width", width)}${attribute("height", height)}${attribute("viewBox", `0 0 ${width} ${height}`)}>`;

/** A swatch as the text of an SVG file, or of an element inside another SVG. */
export const swatchSvg = (drawing: SwatchDrawing, surfaces: Surfaces = lightSurfaces): string =>
  `${opened(drawing.width, drawing.height)}${paths(drawing.marks, surfaces)}</svg>`;

function pane(marks: readonly Mark[], from: number, to: number, height: number, surfaces: Surfaces): string {
  if (marks.length === 0) return "";
  const width = to - from;
  return `<svg${attribute("x", from)}${attribute("width", width)}${attribute("height", height)}${attribute("viewBox", `${from} 0 ${width} ${height}`)} overflow="hidden">${paths(marks, surfaces)}</svg>`;
}

/** A pair as the text of an SVG file. Its halves are windows, not clips, so no id can clash. */
export function pairSvg(pair: PairDrawing, surfaces: Surfaces = lightSurfaces): string {
  const { width, height, seam } = pair;
  const under = pair.right.length > 0 ? 1 : 0; // or a pale hairline opens at the seam when scaled
  return [
    opened(width, height),
    paths(pair.ground, surfaces),
    pane(pair.left, 0, seam + under, height, surfaces),
    pane(pair.right, seam, width, height, surfaces),
    paths(pair.over, surfaces),
    "</svg>",
  ].join("");
}
