import * as z from "zod/mini";
import { fields, type Mapping } from "../engine/intake/index.ts";
import { families } from "../engine/supply/index.ts";

/** How lists with the same heads were read last: kept on this device, beside the notebook and in no backup. */
const place = "understudy.readings";

/** More than anybody's lists; the oldest goes first. */
const mostKept = 40;

const ReadingSchema = z.object({
  columns: z.array(z.nullable(z.enum(fields))),
  currency: z.string(),
  family: z.nullable(z.enum(families)),
});
const ReadingsSchema = z.array(z.tuple([z.string(), ReadingSchema]));

type Reading = Omit<Mapping, "head">;
type Readings = z.infer<typeof ReadingsSchema>;

/** All that is kept; nothing where storage is shut off or somebody else wrote there. */
function readings(): Readings {
  try {
    return ReadingsSchema.parse(JSON.parse(localStorage.getItem(place) ?? "[]"));
  } catch {
    return [];
  }
}

/** How a list with these heads was read last; null for one that was not seen before. */
export const keptReading = (print: string): Reading | null =>
  readings().find(([known]) => known === print)?.[1] ?? null;

/** Keeps how a list was read, for the next one with the same heads. */
export function keepReading(print: string, { columns, currency, family }: Reading): void {
  const others = readings().filter(([known]) => known !== print);
  const all = [...others, [print, { columns, currency, family }]].slice(-mostKept);
  try {
    localStorage.setItem(place, JSON.stringify(all));
  } catch {
    // storage is shut off or full: the next list is guessed again
  }
}
