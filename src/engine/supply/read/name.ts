import type { Family } from "../traits.ts";
import type { Head } from "./words.ts";

/** What the name is made of: trait values as text, the size as typed, the colour, and what was not understood. */
export type Parts = Readonly<{
  family: Family;
  head: Head | null;
  traits: ReadonlyMap<string, unknown>;
  size: string | null;
  colour: string | null;
  leftover: readonly string[];
}>;

/** A letter whose capital is two (ß, ligatures) stays as it was written. */
function capital(text: string): string {
  const first = text.charAt(0).toUpperCase();
  return first.length === 1 ? first + text.slice(1) : text;
}

type Namer = (word: (trait: string) => string) => string;

const mediums: ReadonlyMap<string, string> = new Map([
  ["oil", "oil paint"],
  ["ink", "paint"],
  ["", "paint"],
]);

const cores: ReadonlyMap<string, string> = new Map([
  ["soluble", "water-soluble graphite"],
  ["", "graphite"],
]);

const uses: ReadonlyMap<string, string> = new Map([
  ["mixed", "mixed media"],
  ["cartridge", "drawing"],
]);

/** How people call a thing: by what sets it apart, and only then by its kind. */
const namers: Readonly<Record<Family, Namer>> = {
  marker: (word) => (word("base").startsWith("water") ? "marker" : `${word("base")} marker`),
  liner: () => "liner",
  graphite: (word) => `${cores.get(word("core")) ?? word("core")} ${word("form")}`,
  "colour-pencil": () => "colour pencil",
  paint: (word) => mediums.get(word("medium")) ?? word("medium"),
  ink: () => "ink",
  pastel: (word) => `${word("kind")} pastel`,
  brush: (word) => `${word("shape")} brush`,
  eraser: (word) => (word("kind") === "pencil" ? "eraser pencil" : `${word("kind")} eraser`),
  paper: (word) => {
    const bound = word("bound");
    const use = uses.get(word("use")) ?? word("use");
    return `${use} ${bound === "" || bound === "loose" ? "paper" : bound}`;
  },
  tool: (word) => word("kind"),
  other: () => "",
};

function headName({ family, head, traits }: Parts): string {
  if (head?.name) return head.name;
  const word = (trait: string): string => {
    const value = traits.get(trait);
    return typeof value === "string" ? value : "";
  };
  return capital(namers[family](word).trim().replace(/\s+/g, " "));
}

/** "Gouache, moss"; "Block, 24 × 32 cm"; what was not understood comes last and is never dropped. */
export const composeName = (parts: Parts): string =>
  [headName(parts), parts.size, parts.colour, ...parts.leftover].filter((part) => part).join(", ");

/** A tool, or something of no family, is called what the person calls it. */
export const spokenName = (text: string): string => capital(text.trim().replace(/\s+/g, " "));
