import { type Supply, SupplySchema } from "../schema.ts";
import { type Family, traitsByFamily } from "../traits.ts";
import { hasColour, readColourName, readHex } from "./colour.ts";
import { hexOfWord } from "./colour-words.ts";
import { familyByMeasure, readMeasures } from "./measures.ts";
import { composeName, spokenName } from "./name.ts";
import { literal, matches, overlaps, whole } from "./phrase.ts";
import { type Found, found, isList, type Piece } from "./piece.ts";
import { readQuantity } from "./quantity.ts";
import { type Run, restOf } from "./rest.ts";
import { headPiece, readHead, readTraits } from "./traits.ts";
import { type Head, traitName } from "./words.ts";

/** A written line, read: what it stands for, where each part of that stands in it, and what is not in it. */
export type LineReading = Readonly<{
  qty: number;
  supply: Supply;
  /** In the order they stand in the line; they never overlap. */
  pieces: readonly Piece[];
  /** What the line could have said and did not, in words for the screen. */
  notSaid: readonly string[];
  /** What was not understood, as written: it is in the supply's name. */
  leftover: readonly string[];
}>;

/** Names that the caller knows and a table of words cannot: the makers and lines of the workbook. */
export type KnownNames = Readonly<{ makers?: readonly string[]; lines?: readonly string[] }>;

const longestFirst = (a: string, b: string) => b.length - a.length || (a < b ? -1 : 1);

function readKnown(
  text: string,
  names: readonly string[],
  field: string,
  taken: readonly Found[],
): readonly Found[] {
  for (const name of names.filter((word) => word.trim() !== "").toSorted(longestFirst)) {
    const pattern = whole(name.trim().split(/\s+/).map(literal).join("\\s+"));
    const [match] = matches(text, pattern, taken);
    if (match) return [found(match, field, name, `${field}: ${name}`)];
  }
  return [];
}

type Draft = Readonly<{ family: Family; head: Head | null; pieces: readonly Found[] }>;

type Step = (taken: readonly Found[]) => readonly (Found | null)[];

function readPieces(text: string, known: KnownNames): Draft {
  const makers = readKnown(text, known.makers ?? [], "maker", []);
  const names = [...makers, ...readKnown(text, known.lines ?? [], "line", makers)];
  // A line's own name may say the kind ("Strand gouache"): it tells the family, and stays one piece.
  const hit = readHead(text, makers);
  const head = hit && headPiece(hit.head, hit.match);
  const family = hit?.head.family ?? familyByMeasure(text) ?? "other";
  const steps: readonly Step[] = [
    (taken) => [head && !taken.some((name) => overlaps(name, head)) ? head : null, readHex(text)],
    (taken) => readMeasures(text, family, taken),
    (taken) => readTraits(text, family, taken),
    (taken) => [readQuantity(text, taken)],
    (taken) => [readColourName(restOf(text, taken), family, hit ? hit.match.index : 0)],
  ];
  const pieces = [...names];
  for (const step of steps) pieces.push(...step(pieces).filter((piece) => piece !== null));
  return { family, head: hit?.head ?? null, pieces: pieces.toSorted((a, b) => a.start - b.start) };
}

/** The values of all pieces by field; traits that the head tells silently come first. */
function valuesOf({ head, pieces }: Draft): ReadonlyMap<string, unknown> {
  const silent = Object.entries(head?.sets ?? {}).map(
    ([trait, value]) => [`traits.${trait}`, value] as const,
  );
  return pieces.reduce((values, { field, value }) => {
    const before = values.get(field);
    const joined = Array.isArray(before) ? [...new Set([...before, value])] : [value];
    return values.set(field, isList(field) ? joined : value);
  }, new Map<string, unknown>(silent));
}

const traitsOf = (values: ReadonlyMap<string, unknown>): ReadonlyMap<string, unknown> =>
  new Map(
    [...values].flatMap(([field, value]) =>
      field.startsWith("traits.") ? [[field.slice("traits.".length), value] as const] : [],
    ),
  );

function colourOf(values: ReadonlyMap<string, unknown>): Readonly<Record<string, unknown>> | null {
  const name = values.get("colour");
  const hex = values.get("colour.hex") ?? (typeof name === "string" ? hexOfWord(name) : null);
  if (!name && !hex) return null;
  return { ...(name ? { name } : {}), ...(hex ? { hex, from: "typed" } : {}) };
}

/** A size as people say it: a sheet's name, or its sides in the unit that was typed. */
function sizeWords(pieces: readonly Found[]): string | null {
  const size = pieces.find((piece) => piece.field === "traits.size");
  if (!size) return null;
  if (typeof size.value === "string") return size.value;
  return size.text.replace(/\s*(?:x|×|\*|by)\s*/i, " × ").replace(/(\d)\s*([^\d\s.,×]+)$/u, "$1 $2");
}

function nameOf(
  text: string,
  draft: Draft,
  values: ReadonlyMap<string, unknown>,
  rest: readonly Run[],
): string {
  const { family, head, pieces } = draft;
  const qty = pieces.find((piece) => piece.field === "qty");
  if (family === "tool" || family === "other")
    return spokenName(
      qty ? `${text.slice(0, qty.start)} ${text.slice(qty.end)}`.replace(/^\s*of\s/i, "") : text,
    );
  const name = values.get("colour");
  return composeName({
    family,
    head,
    traits: traitsOf(values),
    size: sizeWords(pieces),
    colour: typeof name === "string" ? name : null,
    leftover: rest.map((run) => run.text),
  });
}

/** Traits whose absence is no news: few brushes hold water, few papers name a colour. */
const seldomSaid: ReadonlySet<string> = new Set(["waterReservoir"]);

function notSaid(family: Family, values: ReadonlyMap<string, unknown>): readonly string[] {
  const open = Object.keys(traitsByFamily[family]).filter(
    (trait) => !values.has(`traits.${trait}`) && !seldomSaid.has(trait),
  );
  const colour = hasColour(family) && !values.has("colour") && !values.has("colour.hex") ? ["colour"] : [];
  return [...colour, ...open.map(traitName)];
}

const given = (values: ReadonlyMap<string, unknown>, ...fields: readonly string[]) =>
  Object.fromEntries(fields.filter((field) => values.has(field)).map((field) => [field, values.get(field)]));

/** Longer than this it is a text and not one thing: patterns would take long over it and find nothing. */
const longestLine = 1000;

const unread = (text: string): LineReading => ({
  qty: 1,
  supply: { family: "other", name: spokenName(text) },
  pieces: [],
  notSaid: [],
  leftover: [text.trim()],
});

/**
 * Reads one line as people write it: "2 gouache tubes moss 15 ml".
 * @param known makers and lines to look out for; without them such words are left over
 * @returns always a supply: of family `other` where nothing tells what it is. Nothing is guessed, and what is
 *   not understood is in `leftover` and in the name.
 */
export function readLine(text: string, known: KnownNames = {}): LineReading {
  if (text.length > longestLine) return unread(text);
  const draft = readPieces(text, known);
  const values = valuesOf(draft);
  const rest = restOf(text, draft.pieces);
  const traits = traitsOf(values);
  const colour = colourOf(values);
  const supply = SupplySchema.parse({
    family: draft.family,
    name: nameOf(text, draft, values, rest),
    ...given(values, "maker", "line"),
    ...(colour ? { colour } : {}),
    ...given(values, "lightfast"),
    ...(traits.size > 0 ? { traits: Object.fromEntries(traits) } : {}),
  });
  const qty = values.get("qty");
  return {
    qty: typeof qty === "number" ? qty : 1,
    supply,
    pieces: draft.pieces.map(({ value: _, ...piece }) => piece),
    notSaid: notSaid(draft.family, values),
    leftover: rest.map((run) => run.text),
  };
}
