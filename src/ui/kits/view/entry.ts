import { type Colour, labOf } from "../../../engine/colour/index.ts";
import type { Evidence, Line } from "../../../engine/price/index.ts";
import {
  type Family,
  isGuessedColour,
  type KnownNames,
  type LineReading,
  type Piece,
  readLine,
  type Supply,
  type WrittenPrice,
} from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { language } from "../../../store/index.ts";
import { asFamily } from "../../supply-form/view/change-family.ts";
import { hasColour, traitField, traitLabel, valueWord } from "../../supply-form/view/trait-fields.ts";
import { plainName } from "../../words/engine/colour.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";

const words = kitsWords.entry;

/**
 * What a person puts right of a piece: the field of the supply, and its value (undefined: not said). A family is
 * put right as another one than `from`.
 */
export type Fix =
  | Readonly<{ field: string; path: readonly string[]; value: unknown }>
  | Readonly<{ field: "family"; from: Family; family: Family }>;

/** A stretch of the typed line: a piece that was understood, or what stands between two. */
export type Stretch = Readonly<{ key: string; text: string; piece: Piece | null }>;

export type EntryView = Readonly<{
  qty: number;
  supply: Supply;
  /** What the line says it costs, where that is looked for. */
  price: WrittenPrice | null;
  /** The family as it was read, before anything was put right. */
  read: Family;
  /** The piece to ask about when none is in hand: a colour that only has a name, or what it is at all. */
  asks: "colour" | "family" | null;
  stretches: readonly Stretch[];
  pieces: readonly Piece[];
  notSaid: string;
  kept: string | null;
  /** All that was understood as one text, for those who do not see the brackets. */
  understood: string;
  caption: string;
}>;

/** The makers and lines that the workbook knows, for the reader of lines to look out for. */
export function knownNames(book: Workbook): KnownNames {
  const supplies = [
    ...(book.stash ?? []).map(({ supply }) => supply),
    ...(book.kits ?? []).flatMap(({ lines }) => (lines ?? []).map(({ supply }) => supply)),
  ];
  const each = (names: readonly (string | null | undefined)[]) =>
    [...new Set(names)].filter((name) => !!name) as string[];
  return {
    makers: each(supplies.map(({ maker }) => maker)),
    lines: each(supplies.map(({ line }) => line)),
  };
}

/** A copy with one field set; undefined leaves it out. An empty path is the supply itself. */
export function setField(supply: Supply, path: readonly string[], value: unknown): Supply {
  const put = (node: Readonly<Record<string, unknown>>, [name, ...rest]: readonly string[]): object => {
    if (name === undefined) return node;
    const inner = (node[name] ?? {}) as Readonly<Record<string, unknown>>; // fields on the way are records
    const next = rest.length === 0 ? value : put(inner, rest);
    const { [name]: _, ...others } = node;
    return next === undefined ? others : { ...others, [name]: next };
  };
  return (path.length === 0 ? value : put(supply, path)) as Supply; // the form gives only values its schema takes
}

const isFamilyFix = (fix: Fix): fix is Extract<Fix, { family: Family }> => "family" in fix;

/** A fix counts for as long as the line still says what was put right. */
function stands(fix: Fix, { pieces, supply }: LineReading): boolean {
  if (isFamilyFix(fix)) return supply.family === fix.from;
  if (fix.field !== "colour") return pieces.some(({ field }) => field === fix.field);
  const { name = null } = (fix.value ?? {}) as Colour; // a fix of the colour is a colour, or none
  return name === (supply.colour?.name ?? null);
}

const fixed = (supply: Supply, fix: Fix): Supply =>
  isFamilyFix(fix) ? asFamily(supply, fix.family) : setField(supply, fix.path, fix.value);

function wordsOf(fix: Fix, family: Family): string {
  if (isFamilyFix(fix)) return supplyWords.families[fix.family];
  const trait = fix.path.at(-1) ?? "";
  const label = traitLabel(trait);
  const value =
    typeof fix.value === "boolean"
      ? fix.value
        ? supplyWords.yes
        : supplyWords.no
      : Array.isArray(fix.value)
        ? fix.value.map((one) => valueWord(family, trait, String(one))).join(", ")
        : typeof fix.value === "string"
          ? valueWord(family, trait, fix.value)
          : supplyWords.notSaid;
  return `${label.toLowerCase()}: ${value}`;
}

function stretchesOf(text: string, pieces: readonly Piece[]): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let at = 0;
  for (const piece of pieces) {
    if (piece.start > at) {
      stretches.push({ key: `before ${piece.start}`, text: text.slice(at, piece.start), piece: null });
    }
    stretches.push({ key: `${piece.start} ${piece.field}`, text: text.slice(piece.start, piece.end), piece });
    at = piece.end;
  }
  if (at < text.length) stretches.push({ key: "rest", text: text.slice(at), piece: null });
  return stretches;
}

/** What stands under the swatch: how it is drawn, or where its colour is from. */
function captionOf(supply: Supply): string {
  if (supply.family === "paper") return words.drawnPaper;
  const lab = labOf(supply.colour);
  const guessed = lab && isGuessedColour(supply.colour) ? words.drawnColour(plainName(lab)) : null;
  if (supply.family === "liner" && supply.traits?.widthMm) {
    return guessed ? `${words.drawnLine}; ${guessed}` : words.drawnLine;
  }
  if (!lab) return supply.colour?.name ? words.drawnNone : "";
  return guessed ?? words.drawnGiven(plainName(lab));
}

function asked(reading: LineReading, supply: Supply): EntryView["asks"] {
  if (reading.supply.family === "other") return "family";
  return reading.supply.colour?.name && labOf(reading.supply.colour) === null && hasColour(supply.family)
    ? "colour"
    : null;
}

/** A typed line as it was understood, with what the person put right; null while nothing is written. */
export function entryView(text: string, known: KnownNames, fixes: readonly Fix[]): EntryView | null {
  if (text.trim() === "") return null;
  const reading: LineReading = readLine(text, known, language);
  const standing = fixes.filter((fix) => stands(fix, reading));
  const supply = standing.reduce(fixed, reading.supply);
  const pieces = reading.pieces.map((piece) => {
    const fix = standing.find(({ field }) => field === piece.field);
    return fix && fix.field !== "colour" ? { ...piece, reads: wordsOf(fix, supply.family) } : piece;
  });
  return {
    qty: reading.qty,
    supply,
    price: reading.price,
    read: reading.supply.family,
    asks: asked(reading, supply),
    stretches: stretchesOf(text, pieces),
    pieces,
    notSaid: reading.notSaid.length > 0 ? words.notSaid(reading.notSaid.join(", ")) : words.allSaid,
    kept: reading.leftover.length > 0 ? words.kept(reading.leftover.join(", ")) : null,
    understood: words.understood(pieces.map((piece) => words.reading(piece.text, piece.reads)).join("; ")),
    caption: captionOf(supply),
  };
}

/** A line of an earlier kit, taken as it is for as long as its text is not changed. */
export type Taken = Readonly<{ text: string; qty: number; supply: Supply; kit: string }>;

/** A line taken from an earlier kit: nothing of it is left to be understood. */
export const takenView = ({ text, qty, supply, kit }: Taken): EntryView => ({
  qty,
  supply,
  price: null,
  read: supply.family,
  asks: null,
  stretches: stretchesOf(text, []),
  pieces: [],
  notSaid: words.taken(kit),
  kept: null,
  understood: words.taken(kit),
  caption: captionOf(supply),
});

/** The piece that the caret stands in or right behind. */
export const pieceAt = (pieces: readonly Piece[], caret: number): Piece | null =>
  pieces.find(({ start, end }) => start <= caret && caret <= end) ?? null;

const canChoose = (family: Family, field: string): boolean => {
  if (field === "family" || field.startsWith("colour")) return true;
  const kind = traitField(family, field.replace(/^traits\./, ""))?.input.kind;
  return kind === "word" || kind === "words" || kind === "yes-no";
};

/** The field asked about: the piece in hand where it leaves a choice, else what the line left open. */
export function askedOf(view: EntryView, inHand: string | null): string | null {
  const held = view.pieces.find(({ field }) => field === inHand)?.field ?? null;
  return held !== null && canChoose(view.supply.family, held) ? held : (view.asks ?? held);
}

/** Where a line is known from. */
export type SourceNote = Readonly<{ source: string; sure: "seen" | "told" | "believed" }>;

/** A new line of a kit, with who says so where that was noted. */
export function lineOf(
  id: string,
  { qty, supply }: Readonly<{ qty: number; supply: Supply }>,
  note: SourceNote | null,
  today: string,
  evidence: readonly Evidence[] = [],
): Line {
  const claim = note && {
    field: "name",
    value: supply.name,
    sure: note.sure,
    source: note.source,
    date: today,
  };
  return {
    id,
    ...(qty === 1 ? {} : { qty }),
    supply,
    ...(claim ? { claims: [claim] } : {}),
    ...(evidence.length > 0 ? { evidence: [...evidence] } : {}),
  };
}

/** Where this kit's lines are known from so far, and what others were known from, each once. */
export const knownSources = (book: Workbook, kitId: string): readonly string[] => {
  const kits = [...(book.kits ?? [])].sort((a, b) => Number(b.id === kitId) - Number(a.id === kitId));
  const all = kits.flatMap(({ sources, lines }) => [
    ...(sources ?? []).flatMap(({ text }) => text ?? []),
    ...(lines ?? []).flatMap(({ claims }) => (claims ?? []).flatMap(({ source }) => source ?? [])),
  ]);
  return [...new Set(all)].slice(0, 12);
};
