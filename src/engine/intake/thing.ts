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
  if (supply.family !== "other")
    return supply.family === family ? [{ text: kind, supply, qty, understood: true }] : [];
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

/** A name for what has none: as it would be read from all that was understood together, else its colour or code. */
function madeName(row: Row, family: Family, told: readonly Told[], reader: Describer): string {
  const colour = row.text("colour");
  const said = [...told.map(({ text }) => text), colour].filter((text) => text !== "").join(" ");
  if (said !== "" && family !== "other")
    return reader.read(told.length > 0 ? said : `${family} ${said}`).supply.name;
  return colour || row.text("kind") || [row.text("line"), row.text("code")].filter(Boolean).join(" ");
}

/** A colour that a name or a kind brings to mind: any other word of theirs is no colour. */
const broughtToMind = ({ supply }: Told): Colour | null => (supply.colour?.hex ? supply.colour : null);

/** The row's text, read as a line of its own, or as said of the family that is known otherwise. */
function toldByText(row: Row, family: Family, reader: Describer): Told | null {
  const text = row.text("text");
  if (text === "") return null;
  const { supply, qty } = reader.read(text, true);
  if (supply.family === family || family === "other") return { text, supply, qty, understood: true };
  return { ...reader.about(family, text, true), qty };
}

/**
 * What a row says a thing is: its text read as a line, its other cells each for itself, and what a cell says goes
 * before what is only in the text.
 * @param unsaid what it is where the row does not say
 */
export function thingOf(row: Row, reader: Describer, words: IntakeWords, unsaid: Family | null): Thing {
  const family = familyOf(row, reader, unsaid);
  const [written, called, kind] = [row.text("text"), row.text("name"), row.text("kind")];
  const text = toldByText(row, family, reader);
  const name = called === "" ? null : reader.about(family, called, true);
  const cells = [...toldByKind(row, family, reader, words), ...toldByCells(row, family, reader, words)];
  const title = called || text?.supply.name || madeName(row, family, cells, reader);
  if (title === "") return null;
  const told = [name, text, ...cells].flatMap((one) => (one?.supply.family === family ? [one] : []));
  const inText = text?.supply.colour ?? told.map(broughtToMind).find((colour) => colour !== null);
  const colour = colourOf(row, inText, words);
  const traits = family === "other" ? {} : traitsOf(told);
  const parsed = SupplySchema.safeParse({
    family,
    name: title,
    ...given({
      maker: row.text("maker") || text?.supply.maker || name?.supply.maker,
      line: row.text("line") || text?.supply.line || name?.supply.line,
      code: row.text("code"),
      gtin: row.take("gtin", (cell) => readGtin(cell, words)),
      colour,
      lightfast: text?.supply.lightfast ?? name?.supply.lightfast,
    }),
    ...(Object.keys(traits).length > 0 ? { traits } : {}),
  });
  if (family === "other" && kind === "")
    row.doubt(called !== "" || written === "" ? "name" : "text", words.noKind);
  return parsed.success ? { supply: parsed.data, qty: text?.qty ?? 1 } : null;
}

/** The fields that have a value. */
const given = (record: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(record).filter(([, value]) => value !== undefined && value !== null && value !== ""),
  );
