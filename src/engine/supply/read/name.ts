import type { Family } from "../traits.ts";
import type { Kind } from "./kinds.ts";
import type { Says } from "./says/index.ts";

/** What the name is made of: trait values as text, the size as typed, the colour, and what was not understood. */
export type Parts = Readonly<{
  family: Family;
  kind: Kind | null;
  traits: ReadonlyMap<string, unknown>;
  size: string | null;
  colour: string | null;
  leftover: readonly string[];
}>;

/** A letter whose capital is two (ß, ligatures) or is another letter's (µ, long s) stays as it was written. */
function capital(text: string): string {
  const first = text.charAt(0);
  const large = first.toUpperCase();
  return large.toLowerCase() === first.toLowerCase() ? large + text.slice(1) : text;
}

function kindName({ family, kind, traits }: Parts, says: Says): string {
  if (kind?.called) return says.called[kind.called];
  const word = (trait: string): string => {
    const value = traits.get(trait);
    return typeof value === "string" ? value : "";
  };
  return capital(says.names[family](word).trim().replace(/\s+/g, " "));
}

/** "Gouache, moss"; "Block, 24 × 32 cm"; what was not understood comes last and is never dropped. */
export const composeName = (parts: Parts, says: Says): string =>
  [kindName(parts, says), parts.size, parts.colour, ...parts.leftover].filter((part) => part).join(", ");

/** A tool, or something of no family, is called what the person calls it. */
export const spokenName = (text: string): string => capital(text.trim().replace(/\s+/g, " "));
