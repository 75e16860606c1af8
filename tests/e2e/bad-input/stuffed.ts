import { readWorkbook, type Workbook } from "../../../src/engine/workbook/index.ts";

/** Text that runs wherever text is taken for markup. */
export const payload =
  "<img src=x onerror=globalThis.hit=1><svg onload=globalThis.hit=1><script>globalThis.hit=1</script>";

const address = "javascript:globalThis.hit=1";

type Place = readonly (string | number)[];

/** Every text of a document, with its place. */
function textsIn(value: unknown, place: Place = []): readonly Place[] {
  if (typeof value === "string") return [place];
  if (Array.isArray(value)) return value.flatMap((inner, index) => textsIn(inner, [...place, index]));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => textsIn(inner, [...place, key]));
}

/** A place without its numbers: the field that it is one value of. */
const fieldOf = (place: Place): string =>
  place.map((step) => (typeof step === "number" ? "[]" : step)).join(".");

/** A copy of a document with the texts of some fields replaced. */
function replaced(value: unknown, fields: ReadonlySet<string>, place: Place = []): unknown {
  if (typeof value === "string") {
    if (!fields.has(fieldOf(place))) return value;
    return place.at(-1) === "url" ? address : payload;
  }
  if (Array.isArray(value)) return value.map((inner, index) => replaced(inner, fields, [...place, index]));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, replaced(inner, fields, [...place, key])]),
  );
}

const isTaken = (document: unknown): boolean => readWorkbook(JSON.stringify(document)).ok;

/** The fields that a workbook takes any text in, whichever they are. */
export function openFields(book: Workbook): ReadonlySet<string> {
  const fields = new Set(textsIn(book).map(fieldOf));
  return new Set([...fields].filter((field) => isTaken(replaced(book, new Set([field])))));
}

/** Ends an attribute and an element, wherever an id is put into either. An id may hold all but a slash. */
const tail = '"><img src=x onerror=globalThis.hit=1>';

/** A copy with the payload behind every id of these, wherever it is named. */
function withTails(value: unknown, ids: ReadonlySet<string>): unknown {
  if (typeof value === "string") {
    const [id = "", ...rest] = value.split("/"); // kit/line
    return ids.has(id) ? [id + tail, ...rest].join("/") : value;
  }
  if (Array.isArray(value)) return value.map((inner) => withTails(inner, ids));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withTails(inner, ids)]));
}

/** A workbook with the payload in all of these fields, and in the ids that addresses are made of. */
export function stuffed(book: Workbook, fields: ReadonlySet<string>): Workbook {
  const { kits, stash, remakes } = book;
  const ids = [kits, stash, remakes].flatMap((records) => (records ?? []).map(({ id }) => id));
  const text = JSON.stringify(withTails(replaced(book, fields), new Set(ids)));
  const reading = readWorkbook(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.workbook;
}
