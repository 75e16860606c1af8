/**
 * Swatches: every supply drawn as it would mark paper, by its family's own hand, and pairs of two in one.
 *
 * Units    px of the drawing; millimetres only where a trait gives them. Colours in CIELAB (D65).
 * Rules    Paths only: no filters, blend modes, pictures, styles or ids, so that drawings print as vectors,
 *          pass a strict content policy and can be exported as they are. The middle of a swatch from 64 px
 *          up keeps the item's own colour.
 * Not here Names and facts: a swatch is hidden from screen readers because words always stand beside it.
 */
export { drawSwatch } from "./draw.ts";
export { drawPair, type SwatchItem } from "./pair.ts";
export { Pair } from "./pair-view.tsx";
export { lightSurfaces, pairSvg, swatchSvg } from "./serialize.ts";
export { Swatch } from "./swatch-view.tsx";
