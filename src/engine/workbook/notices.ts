import type { Notice } from "../record/index.ts";
import { isDate, isPeriod } from "../record/index.ts";
import { placeOf } from "./place.ts";
import type { Workbook } from "./schema.ts";

const dateFields = new Set([
  "date",
  "acquired",
  "opened",
  "loggedOn",
  "valuedOn",
  "started",
  "finished",
  "at",
  "period",
]);

/** Dates of known fields that lie after `today`. */
function futureDates(value: unknown, path: readonly PropertyKey[], today: string): readonly Notice[] {
  if (Array.isArray(value)) return value.flatMap((inner, i) => futureDates(inner, [...path, i], today));
  if (typeof value === "object" && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => futureDates(inner, [...path, key], today));
  }
  const field = path.at(-1);
  if (typeof value !== "string" || typeof field !== "string" || !dateFields.has(field)) return [];
  const now = isDate(value) ? today : isPeriod(value) ? today.slice(0, 7) : value;
  return value > now ? [{ place: placeOf(path), notice: `${value} is still to come` }] : [];
}

// A rate that moves by more than half between two tables is more often a slip than the market.
const oddRatio = 1.5;

/** Rates that differ much from the table before, or that give the base itself another value than 1. */
function oddRates(workbook: Workbook): readonly Notice[] {
  const tables = (workbook.rates ?? []).map((table, index) => ({ table, index }));
  const byDate = tables.toSorted((a, b) => (a.table.date < b.table.date ? -1 : 1));
  return byDate.flatMap(({ table, index }, position) =>
    Object.entries(table.quotes).flatMap(([code, quote]) => {
      if (quote === null) return [];
      const place = placeOf(["rates", index, "quotes", code]);
      if (code === table.base) {
        return Number(quote) === 1
          ? []
          : [{ place, notice: `${code} is the base, so it counts as 1, not ${quote}` }];
      }
      const before = byDate
        .slice(0, position)
        .findLast(
          (earlier) => earlier.table.base === table.base && Object.hasOwn(earlier.table.quotes, code),
        );
      const last = before && Number(before.table.quotes[code]);
      if (!last) return [];
      const ratio = Number(quote) / last;
      if (ratio <= oddRatio && ratio >= 1 / oddRatio) return [];
      return [{ place, notice: `${quote} is far from ${last} of ${before.table.date}; check it` }];
    }),
  );
}

/** Stand-ins of two uses whose shares do not come to the whole. */
function oddShares(workbook: Workbook): readonly Notice[] {
  return (workbook.remakes ?? []).flatMap((remake, r) =>
    (remake.picks ?? []).flatMap((pick, p) => {
      const uses = pick.uses ?? [];
      const total = uses.reduce((sum, use) => sum + Number(use.share ?? 1), 0);
      if (uses.length < 2 || Math.abs(total - 1) < 1e-9) return [];
      return [{ place: placeOf(["remakes", r, "picks", p, "uses"]), notice: "the shares do not come to 1" }];
    }),
  );
}

/** What is odd in a workbook without being wrong: nothing is refused for it. */
export const noticesOf = (workbook: Workbook, today: string): readonly Notice[] => [
  ...futureDates(workbook, [], today),
  ...oddRates(workbook),
  ...oddShares(workbook),
];
