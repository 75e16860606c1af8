import type { Language } from "../../record/index.ts";
import { type Supply, SupplySchema } from "../schema.ts";
import { type Family, traitsByFamily } from "../traits.ts";
import { withoutBullet } from "./bullet.ts";
import { hasColour } from "./colour.ts";
import { type Draft, type KnownNames, leftIn, readPieces } from "./draft.ts";
import { guessedHex } from "./guessed.ts";
import { composeName, spokenName } from "./name.ts";
import { type Found, isList, type Piece } from "./piece.ts";
import { isPrice, type WrittenPrice } from "./price.ts";
import type { Run } from "./rest.ts";
import type { Says } from "./says/index.ts";
import { spelt } from "./spelling.ts";
import { type Voice, voices } from "./voice.ts";

/** A written line, read: what it stands for, where each part of that stands in it, and what is not in it. */
export type LineReading = Readonly<{
  qty: number;
  supply: Supply;
  /** What it is said to cost, where prices were to be looked for. */
  price: WrittenPrice | null;
  /** In the order they stand in the line; they never overlap. */
  pieces: readonly Piece[];
  /** What the line could have said and did not, in words for the screen. */
  notSaid: readonly string[];
  /** What was not understood, as written: it is in the supply's name. */
  leftover: readonly string[];
}>;

/**
 * The values of all pieces by field, the first where two say the same; what the head tells silently counts where no
 * piece says it.
 */
function valuesOf({ head, pieces }: Draft): ReadonlyMap<string, unknown> {
  const silent = Object.entries(head?.sets ?? {}).map(
    ([trait, value]) => [`traits.${trait}`, value] as const,
  );
  const values = new Map<string, unknown>(silent);
  for (const { field, value } of pieces.toReversed()) if (!isList(field)) values.set(field, value);
  for (const { field, value } of pieces.filter((piece) => isList(piece.field))) {
    const before = values.get(field);
    values.set(field, [...new Set([...(Array.isArray(before) ? before : []), value])]);
  }
  return values;
}

const traitsOf = (values: ReadonlyMap<string, unknown>): ReadonlyMap<string, unknown> =>
  new Map(
    [...values].flatMap(([field, value]) =>
      field.startsWith("traits.") ? [[field.slice("traits.".length), value] as const] : [],
    ),
  );

/** A hex that was written is typed; one that a name brings to mind is nobody's word, and says so by having no `from`. */
function colourOf(values: ReadonlyMap<string, unknown>): Readonly<Record<string, unknown>> | null {
  const name = values.get("colour");
  const typed = values.get("colour.hex");
  const guessed = typeof name === "string" ? guessedHex(name) : null;
  if (!name && !typed) return null;
  return {
    ...(name ? { name } : {}),
    ...(typed ? { hex: typed, from: "typed" } : guessed ? { hex: guessed } : {}),
  };
}

/** A size as people say it: a sheet's name, or its sides in the unit that was typed. */
function sizeWords(pieces: readonly Found[]): string | null {
  const size = pieces.find((piece) => piece.field === "traits.size");
  if (!size) return null;
  if (typeof size.value === "string") return size.value;
  return size.text.replace(/\s*(?:x|×|\*|by)\s*/i, " × ").replace(/(\d)\s*([^\d\s.,×"”″]+)$/u, "$1 $2");
}

function nameOf(
  text: string,
  draft: Draft,
  values: ReadonlyMap<string, unknown>,
  rest: readonly Run[],
  says: Says,
): string {
  const { family, head, pieces } = draft;
  const qty = pieces.find((piece) => piece.field === "qty");
  if (family === "tool" || family === "other")
    return spokenName(
      qty ? `${text.slice(0, qty.start)} ${text.slice(qty.end)}`.replace(/^\s*of\s/i, "") : text,
    );
  const name = values.get("colour");
  return composeName(
    {
      family,
      kind: head?.kind ?? null,
      traits: traitsOf(values),
      size: sizeWords(pieces),
      colour: typeof name === "string" ? name : null,
      leftover: rest.map((run) => run.text),
    },
    says,
  );
}

/** Traits whose absence is no news: few brushes hold water, few papers name a colour. */
const seldomSaid: ReadonlySet<string> = new Set(["waterReservoir"]);

function notSaid(family: Family, values: ReadonlyMap<string, unknown>, says: Says): readonly string[] {
  const open = Object.keys(traitsByFamily[family]).filter(
    (trait) => !values.has(`traits.${trait}`) && !seldomSaid.has(trait),
  );
  const colour = hasColour(family) && !values.has("colour") && !values.has("colour.hex") ? [says.colour] : [];
  return [...colour, ...open.map(says.trait)];
}

const given = (values: ReadonlyMap<string, unknown>, ...fields: readonly string[]) =>
  Object.fromEntries(fields.filter((field) => values.has(field)).map((field) => [field, values.get(field)]));

/** Longer than this it is a text and not one thing: patterns would take long over it and find nothing. */
const longestLine = 1000;

const unread = (text: string): LineReading => ({
  qty: 1,
  supply: { family: "other", name: spokenName(text) },
  price: null,
  pieces: [],
  notSaid: [],
  leftover: [text.trim()],
});

const moved =
  (offset: number) =>
  ({ value: _, ...piece }: Found): Piece => ({
    ...piece,
    start: piece.start + offset,
    end: piece.end + offset,
  });

/** A line taken apart as it is mostly spelt, each piece where it stands as it was written. */
function readDraft(text: string, known: KnownNames, voice: Voice): Draft {
  const { text: right, back } = spelt(text);
  const draft = readPieces(right, known, voice);
  if (right === text) return draft;
  const pieces = draft.pieces.map((piece) => {
    const span = back(piece);
    return { ...piece, ...span, text: text.slice(span.start, span.end) };
  });
  return { ...draft, pieces, aside: draft.aside.map(back) };
}

/**
 * Reads one line as people write it: "2 gouache tubes moss 15 ml". A bullet or number that lists it is no part of it.
 * @param known makers and lines to look out for; without them such words are left over
 * @param language what readings and names are said in; its words come first where another language's differ
 * @returns always a supply: of family `other` where nothing tells what it is. Nothing is guessed but the colour a
 *   name brings to mind (`isGuessedColour`), and what is not understood is in `leftover` and in the name.
 */
export function readLine(line: string, known: KnownNames = {}, language: Language = "en"): LineReading {
  if (line.length > longestLine) return unread(line);
  const voice = voices[language];
  const text = withoutBullet(line);
  const draft = readDraft(text, known, voice);
  const values = valuesOf(draft);
  const rest = leftIn(text, draft, voice);
  const traits = traitsOf(values);
  const colour = colourOf(values);
  const supply = SupplySchema.parse({
    family: draft.family,
    name: nameOf(text, draft, values, rest, voice.says),
    ...given(values, "maker", "line"),
    ...(colour ? { colour } : {}),
    ...given(values, "lightfast"),
    ...(traits.size > 0 ? { traits: Object.fromEntries(traits) } : {}),
  });
  const qty = values.get("qty");
  const price = values.get("price");
  return {
    qty: typeof qty === "number" ? qty : 1,
    supply,
    price: isPrice(price) ? price : null,
    pieces: draft.pieces.map(moved(line.length - text.length)),
    notSaid: notSaid(draft.family, values, voice.says),
    leftover: rest.map((run) => run.text),
  };
}
