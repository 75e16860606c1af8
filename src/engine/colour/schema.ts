import * as z from "zod/mini";
import { maybe, Text } from "../record/index.ts";

/** A colour as a person or a photo gave it: words, sRGB hex, or CIELAB with its white. */
export const ColourSchema = z.looseObject({
  name: maybe(Text),
  hex: maybe(
    z.string().check(z.regex(/^#[0-9a-fA-F]{6}$/, 'not a colour; write six hex digits, such as "#6b7d3a"')),
  ),
  lab: maybe(z.tuple([z.number(), z.number(), z.number()])),
  white: maybe(z.enum(["D65", "D50"])),
  from: maybe(z.enum(["typed", "measured"])),
});

export type Colour = z.infer<typeof ColourSchema>;
