import type { RateTable } from "../money/index.ts";
import { fail, type Language, type Outcome, ok } from "../record/index.ts";
import type { PowerLaw } from "./power-law.ts";
import type { Evidence, Line, Settled, Shop } from "./schema.ts";
import type { Quote } from "./trace.ts";

type Absent<T> = T | null | undefined;

/** What prices need of a kit. A workbook's kit has all of it. */
export type PricedKit = Readonly<{
  id: string;
  title?: Absent<string>;
  period?: Absent<string>;
  valuedOn?: Absent<string>;
  lines?: Absent<readonly Line[]>;
}>;

/** What prices need of a market. */
export type PriceMarket = Readonly<{ id: string; name: string; currency: string }>;

/** What prices need of a workbook; lists may be left out. */
export type PriceBook = Readonly<{
  kits?: Absent<readonly PricedKit[]>;
  markets?: Absent<readonly PriceMarket[]>;
  rates?: Absent<readonly RateTable[]>;
  shops?: Absent<readonly Shop[]>;
}>;

/** Everything an estimate looks at: one line of one kit, for one market, on one day's rates. */
export type Scene = Readonly<{
  book: PriceBook;
  kit: PricedKit;
  line: Line;
  market: PriceMarket;
  valuedOn: string;
  /** The language that sentences are in. */
  language: Language;
  /** Where the line stands in the workbook: `kits[2].lines[0]`. */
  place: string;
  /** Lines (`kit/line`) that this estimate already rests on, so that precedents cannot go in circles. */
  path: readonly string[];
  /** What earlier lines were found to say, by `kit/line`: many precedents may lead to the same one. */
  told: Map<string, Outcome<Quote | null>>;
  /** How prices were found to grow with quantity, by kind and unit; null where they do not say. */
  laws: Map<string, PowerLaw | null>;
}>;

/** One price found, with its position in the line's list. */
export type Found = Readonly<{ evidence: Evidence; index: number }>;

/** The price or the method that a person goes with, with its position in the line's list. */
export type Choice = Readonly<{ settled: Settled; index: number }>;

/** Where a kit stands in the workbook: `kits[2]`. */
export const kitPlace = (book: PriceBook, kit: PricedKit): string =>
  `kits[${(book.kits ?? []).findIndex((other) => other.id === kit.id)}]`;

const linePlace = (book: PriceBook, kit: PricedKit, line: Line): string =>
  `${kitPlace(book, kit)}.lines[${(kit.lines ?? []).findIndex((other) => other.id === line.id)}]`;

/** How a precedent names a line. */
export const reference = (kit: PricedKit, line: Line): string => `${kit.id}/${line.id}`;

/** The market of an id, or a fault: ids are checked where a workbook is read, so this is a caller's. */
export function marketOf<M extends PriceMarket>(markets: Absent<readonly M[]>, id: string): Outcome<M> {
  const market = (markets ?? []).find((other) => other.id === id);
  if (market) return ok(market);
  return fail("markets", `there is no market "${id}"`, "choose a market of this workbook, or add it");
}

/** The day whose rates value a kit, or a fault where it is missing. */
export function valuedOnOf(book: PriceBook, kit: PricedKit): Outcome<string> {
  if (kit.valuedOn) return ok(kit.valuedOn);
  return fail(
    `${kitPlace(book, kit)}.valuedOn`,
    "the day whose prices and rates count is missing",
    "say as of which day the kit is valued, as YYYY-MM-DD",
  );
}

/** Sets the scene for one line, or says what is missing. */
export function sceneOf(
  book: PriceBook,
  kit: PricedKit,
  line: Line,
  marketId: string,
  language: Language,
): Outcome<Scene> {
  const market = marketOf(book.markets, marketId);
  if (!market.ok) return market;
  const valuedOn = valuedOnOf(book, kit);
  if (!valuedOn.ok) return valuedOn;
  const place = linePlace(book, kit, line);
  const path = [reference(kit, line)];
  const [told, laws]: [Scene["told"], Scene["laws"]] = [new Map(), new Map()];
  const where = { book, kit, line, market: market.value, valuedOn: valuedOn.value };
  return ok({ ...where, language, place, path, told, laws });
}

/** The prices found for a line, each with its position. */
export const foundOf = (line: Line): readonly Found[] =>
  (line.evidence ?? []).map((evidence, index) => ({ evidence, index }));

/** Newest first; of one day, the later in the file; undated last. */
export const newestFirst = (found: readonly Found[]): readonly Found[] =>
  found.toSorted((a, b) => {
    const [dayA, dayB] = [a.evidence.date ?? "", b.evidence.date ?? ""];
    return dayA < dayB ? 1 : dayA > dayB ? -1 : b.index - a.index;
  });
