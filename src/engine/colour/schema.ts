import * as z from "zod/mini";
import { maybe, Text } from "../record/index.ts";

/**
 * An optional field of ours, a number. The format knows no such field, so whatever stands there is kept and is no
 * fault; what is no number counts as left out. Of a measured colour: `spread`, how much its swatch varies, as the
 * root mean square of CIEDE2000, from 0 up; `certainty`, how far to rely on it, 0 to 1.
 */
const Measure = z.optional(z.unknown());

/** A colour as a person or a photo gave it: words, sRGB hex, or CIELAB with its white. */
export const ColourSchema = z.looseObject({
  name: maybe(Text),
  hex: maybe(
    z.string().check(z.regex(/^#[0-9a-fA-F]{6}$/, 'not a colour; write six hex digits, such as "#6b7d3a"')),
  ),
  lab: maybe(z.tuple([z.number(), z.number(), z.number()])),
  white: maybe(z.enum(["D65", "D50"])),
  from: maybe(z.enum(["typed", "measured"])),
  spread: Measure,
  certainty: Measure,
});

export type Colour = z.infer<typeof ColourSchema>;
