import type { Colour } from "../colour/index.ts";
import { type Family, type Supply, SupplySchema } from "../supply/index.ts";
import { type Describer, spelledOut, type Told } from "./describe.ts";
import type { Field } from "./fields.ts";
import { readColourCell, readHexCell } from "./read/colour.ts";
import { isOtherKind, readGtin } from "./read/words.ts";
import type { Row } from "./row.ts";
import type { IntakeWords } from "./words/index.ts";

/** Cells that tell a trait, in the words and units of the trade. */
const traitFields = ["medium", "form", "grade", "size", "gsm", "ml", "width", "sheets"] as const;

/** What a row says a thing is. `qty`: how many its text speaks of. Null: nothing says what it is. */
export type Thing = Readonly<{ supply: Supply; qty: number }> | null;

const spelled = (row: Row, field: Field): string => spelledOut(field, row.cell(field));

/** All that may tell what kind of thing it is, the surest first: what is said of its kind, its text, its traits. */
function familyOf(row: Row, reader: Describer, unsaid: Family | null): Family {
  const kind = row.text("kind");
  const tries = [
    kind,
    row.text("text"),
    ["medium", "form", "grade"]
      .map((field) => row.text(field as Field))
      .join(" ")
      .trim(), // fields of the list above
    row.text("name"),
    traitFields
      .map((field) => spelled(row, field))
      .join(" ")
      .trim(),
  ];
  if (kind !== "" && isOtherKind(kind)) return "other";
  for (const text of tries) {
    const family = text === "" ? "other" : reader.read(text).supply.family;
    if (family !== "other") return family;
  }
  return unsaid ?? "other";
}

/** What each cell with a trait tells; one that tells nothing of such a thing is kept in the note. */
function toldByCells(row: Row, family: Family, reader: Describer, words: IntakeWords): readonly Told[] {
  return traitFields.flatMap((field) => {
    if (row.text(field) === "") return [];
    const told = reader.about(family, spelled(row, field));
    if (told.understood) return [told];
    row.doubt(field, words.noSuchTrait(row.text(field)));
    row.keep(row.column(field));
    return [];
  });
}

/** The kind's own reading; one that is not known is kept in the note. */
function toldByKind(row: Row, family: Family, reader: Describer, words: IntakeWords): readonly Told[] {
  const kind = row.text("kind");
  if (kind === "" || isOtherKind(kind)) return [];
  const { supply, qty } = reader.read(kind);
  if (supply.family !== "other") return supply.family === family ? [{ supply, qty, understood: true }] : [];
  row.doubt("kind", words.kindUnknown(kind));
  row.keep(row.column("kind"));
  return [];
}

const traitsOf = (told: readonly Told[]): Readonly<Record<string, unknown>> =>
  Object.assign({}, ...told.map(({ supply }) => supply.traits ?? {}));

/** The colour: figures and name, each from its own column, else what the text says. */
function colourOf(row: Row, told: Colour | null | undefined, words: IntakeWords): Colour | null {
  const figures = row.take("hex", (cell) => readHexCell(cell, words));
  const named = row.take("colour", readColourCell);
  const given = [figures, named].find((colour) => colour?.from === "typed");
  const name = named?.name ?? figures?.name ?? told?.name;
  if (given) return { ...(name ? { name } : {}), ...given };
  return named ?? figures ?? told ?? null;
}

/** A name for what has none: as it would be read from all its cells together, else its line and code. */
function madeName(row: Row, family: Family, reader: Describer): string {
  const said = [row.text("kind"), ...traitFields.map((field) => spelled(row, field)), row.text("colour")]
    .filter((text) => text !== "")
    .join(" ");
  if (said !== "" && family !== "other") return reader.read(said).supply.name;
  return (
    row.text("colour") || row.text("kind") || [row.text("line"), row.text("code")].filter(Boolean).join(" ")
  );
}

/**
 * What a row says a thing is: its text read as a line, its other cells each for itself, and what a cell says goes
 * before what is only in the text.
 * @param unsaid what it is where the row does not say
 */
export function thingOf(row: Row, reader: Describer, words: IntakeWords, unsaid: Family | null): Thing {
  const family = familyOf(row, reader, unsaid);
  const [written, called] = [row.text("text"), row.text("name")];
  const text = written === "" ? null : reader.read(written);
  const ofText: readonly Told[] = [
    ...(called === "" ? [] : [reader.about(family, called, true)]),
    ...(text && text.supply.family === family
      ? [{ supply: text.supply, qty: text.qty, understood: true }]
      : []),
    ...(text && text.supply.family === "other" && family !== "other" ? [reader.about(family, written)] : []),
  ].filter(({ supply }) => supply.family === family);
  const told = [
    ...ofText,
    ...toldByKind(row, family, reader, words),
    ...toldByCells(row, family, reader, words),
  ];
  const name = called || text?.supply.name || madeName(row, family, reader);
  if (name === "") return null;
  const last = told.findLast(({ supply }) => supply.colour)?.supply.colour;
  const colour = colourOf(row, last, words);
  const traits = family === "other" ? {} : traitsOf(told);
  const fact = (field: "maker" | "line" | "code") =>
    row.text(field) ||
    (field === "code" ? undefined : ofText.find(({ supply }) => supply[field])?.supply[field]);
  const parsed = SupplySchema.safeParse({
    family,
    name,
    ...given({ maker: fact("maker"), line: fact("line"), code: fact("code") }),
    ...given({ gtin: row.take("gtin", (cell) => readGtin(cell, words)), colour: colour ?? undefined }),
    ...given({ lightfast: ofText.find(({ supply }) => supply.lightfast)?.supply.lightfast ?? undefined }),
    ...(Object.keys(traits).length > 0 ? { traits } : {}),
  });
  if (family === "other" && !isOtherKind(row.text("kind")) && row.text("kind") === "")
    row.doubt(called !== "" || written === "" ? "name" : "text", words.noKind);
  return parsed.success ? { supply: parsed.data, qty: text?.qty ?? 1 } : null;
}

/** The fields that have a value. */
const given = (record: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(record).filter(([, value]) => value !== undefined && value !== null && value !== ""),
  );
