import { foundOf, newestFirst, type PriceBook, type PricedKit, reference } from "./book.ts";
import { ratioOf, within } from "./quantity.ts";
import type { Line, Pack } from "./schema.ts";

/** An earlier kit's line that could say what this one costs. */
export type Precedent = Readonly<{ reference: string; kit: PricedKit; line: Line }>;

/** Quantities up to this factor apart are of like size (common practice, no source). */
const likeFactor = 2;

/** What a line holds, as a pack that another line can be compared with. */
function packOf(line: Line): Pack | null {
  const { supply } = line;
  if (supply.family === "paint" || supply.family === "ink") return { ml: supply.traits?.ml };
  if (supply.family === "paper") return { sheets: supply.traits?.sheets, size: supply.traits?.size };
  return null;
}

/** Same family and like size; where one of the two sizes is not known, the family decides. */
function isLike(line: Line, earlier: Line): boolean {
  if (line.supply.family !== earlier.supply.family) return false;
  const ratio = ratioOf(packOf(earlier), line.supply);
  return ratio === null || within(ratio, likeFactor);
}

const hasListPrice = (line: Line): boolean =>
  (line.settled ?? []).some(({ kind, price, method }) => (kind ?? "list") === "list" && (price || method)) ||
  newestFirst(foundOf(line)).some(({ evidence }) => evidence.kind === "list" && evidence.price);

/** Lines of earlier kits that may be named as precedents for a line: the newest kit first. */
export function possiblePrecedents(book: PriceBook, kit: PricedKit, line: Line): readonly Precedent[] {
  const period = kit.period ?? "";
  return (book.kits ?? [])
    .filter((earlier) => earlier.id !== kit.id && (earlier.period ?? "") < period)
    .toSorted((a, b) =>
      (a.period ?? "") < (b.period ?? "") ? 1 : (a.period ?? "") > (b.period ?? "") ? -1 : 0,
    )
    .flatMap((earlier) =>
      (earlier.lines ?? [])
        .filter((other) => isLike(line, other) && hasListPrice(other))
        .map((other) => ({ reference: reference(earlier, other), kit: earlier, line: other })),
    );
}
