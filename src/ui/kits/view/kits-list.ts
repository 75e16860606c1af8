import { coverage } from "../../../engine/match/index.ts";
import type { Supply } from "../../../engine/supply/index.ts";
import type { Remake, Workbook } from "../../../engine/workbook/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { type Formatter, format as ownFormat } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";

const words = kitsWords.list;

/** One kit of the list, ready to print. */
export type KitRow = Readonly<{
  id: string;
  name: string;
  /** Who sent it, and when. */
  from: string;
  /** Its lines by name, for those who do not see the swatches. */
  holds: string;
  swatches: readonly Readonly<{ id: string; supply: Supply }>[];
  facts: readonly string[];
  /** How well the stash makes it up: 0–100, or null for a kit without lines or with nothing owned. */
  figure: number | null;
  gaps: string | null;
}>;

export type KitsView = Readonly<{ lead: string; leadMore: string; rows: readonly KitRow[] }>;

export const kitName = (kit: Kit, format: Formatter = ownFormat): string =>
  kit.title || words.of(kit.maker, format.month(kit.period));

/** Newest first: by the month it was sent for, then by the day it was logged, then by id. */
const newestFirst = (a: Kit, b: Kit): number =>
  compare(b.period, a.period) || compare(b.loggedOn ?? "", a.loggedOn ?? "") || compare(a.id, b.id);
const compare = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

function remakeFact(remakes: readonly Remake[], format: Formatter): readonly string[] {
  const done = remakes
    .flatMap(({ finished }) => finished ?? [])
    .toSorted()
    .at(-1);
  if (remakes.some(({ finished }) => !finished)) return [words.underWay];
  return done === undefined ? [] : [words.remade(format.date(done))];
}

const outOf100 = (share: number): number => Math.round(share * 100);

/** All kits with how well the stash would make each one up, and the one to take next. */
export function kitsView(book: Workbook, format: Formatter = ownFormat): KitsView {
  const { kits, stash, kinships, weights } = book;
  const all = (kits ?? []).toSorted(newestFirst);
  const owned = stash ?? [];
  const covered = coverage({ kits: all, stash: owned, kinships, weights });
  const byKit = new Map(covered.map((one) => [one.kit, one]));
  const remakesOf = (kit: Kit) => (book.remakes ?? []).filter((remake) => remake.kit === kit.id);

  const rows = all.map((kit): KitRow => {
    const lines = kit.lines ?? [];
    const known = byKit.get(kit.id);
    const judged = known && lines.length > 0 && owned.length > 0 ? known : null;
    return {
      id: kit.id,
      name: kitName(kit, format),
      from: words.of(kit.maker, format.month(kit.period)),
      holds: lines.map(({ supply }) => supply.name).join("; "),
      swatches: lines.map(({ id, supply }) => ({ id: `${kit.id}/${id}`, supply })),
      facts: [
        lines.length === 0 ? words.noLines : words.lines(lines.length),
        ...(kit.received ? [words.received] : []),
        ...remakeFact(remakesOf(kit), format),
      ],
      figure: judged && outOf100(judged.meanLikeness),
      gaps: judged && words.gaps(judged.gaps),
    };
  });
  const begun = new Set((book.remakes ?? []).map(({ kit }) => kit));
  const next = covered.find(({ kit, worst }) => worst !== null && !begun.has(kit));
  const bare = all.some(({ id }) => !begun.has(id)) ? words.leadNoLines : words.leadAllBegun;
  const otherwise = owned.length > 0 ? bare : words.leadNoStash;
  const row = rows.find(({ id }) => id === next?.kit);
  return {
    lead: row && row.figure !== null ? words.lead(row.name, String(row.figure), begun.size > 0) : otherwise,
    leadMore: words.count(rows.length, finishedKits(book)),
    rows,
  };
}

const finishedKits = (book: Workbook): number =>
  new Set((book.remakes ?? []).filter(({ finished }) => finished).map(({ kit }) => kit)).size;
