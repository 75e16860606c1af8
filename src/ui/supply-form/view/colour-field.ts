import { type Colour, hexFromLab, labOf, parseColour } from "../../../engine/colour/index.ts";
import { plainName } from "../../words/engine/colour.ts";
import { faultIn } from "../../words/faults.ts";
import type { Read } from "./read-trait.ts";

type Given = Colour | null | undefined;

/** The colour as sRGB hex, also of one that was measured; null while there is none. */
export function hexOf(colour: Given): string | null {
  const lab = labOf(colour);
  return lab && (colour?.hex && !colour.lab ? colour.hex : hexFromLab(lab));
}

/** The colour's plain name, "muted yellow-green", so that nobody depends on seeing it. */
export function saidColour(colour: Given): string | null {
  const lab = labOf(colour);
  return lab && plainName(lab);
}

/** What a typed hex or lab(…) comes to, as hex. */
export function readColour(text: string): Read<string> {
  if (text.trim() === "") return { ok: true, value: undefined };
  const parsed = parseColour(text);
  if (parsed.ok) return { ok: true, value: hexFromLab(parsed.value) };
  const { problem, remedy } = faultIn(parsed.fault);
  return { ok: false, fault: `${problem}: ${remedy}.` };
}

/** The colour with another hex. A measured Lab would outrank it, so that goes, with how well it was measured; its name stays. */
export function withHex(colour: Given, hex: string | undefined): Colour | undefined {
  const { lab, white, hex: _, from, spread, certainty, ...rest } = colour ?? {};
  const next = hex === undefined ? rest : { ...rest, hex, from: "typed" as const };
  return Object.keys(next).length > 0 ? next : undefined;
}

/** The colour under another name. */
export function withName(colour: Given, name: string | undefined): Colour | undefined {
  const { name: _, ...rest } = colour ?? {};
  const next = name === undefined ? rest : { ...rest, name };
  return Object.keys(next).length > 0 ? next : undefined;
}
