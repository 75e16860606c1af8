import type { Evidence, Line } from "../../engine/price/index.ts";
import type { StashItem } from "../../engine/supply/index.ts";
import type { Remake, Workbook } from "../../engine/workbook/index.ts";
import type { ImportRule, Kit, Market, Parcel, Tier } from "../../engine/worth/index.ts";
import { same } from "../journal/index.ts";

type Ids = ReadonlySet<string>;
type Known = Readonly<{ markets: Ids; shops: Ids; photos: Ids; stash: Ids; kits: Ids; lines: Ids }>;
type Maybe<T> = T | null | undefined;

const idsOf = (records: Maybe<readonly Readonly<{ id: string }>[]>): Ids =>
  new Set((records ?? []).map(({ id }) => id));

const knownIn = (book: Workbook): Known => ({
  markets: idsOf(book.markets),
  shops: idsOf(book.shops),
  photos: idsOf(book.photos),
  stash: idsOf(book.stash),
  kits: idsOf(book.kits),
  lines: new Set(book.kits?.flatMap(({ id, lines }) => (lines ?? []).map((line) => `${id}/${line.id}`))),
});

/** Whether a mention leads somewhere; none at all does no harm. */
const leads = (ids: Ids, id: Maybe<string>): boolean => id === null || id === undefined || ids.has(id);

const mention = (ids: Ids, id: Maybe<string>): Maybe<string> => (leads(ids, id) ? id : undefined);

/** The elements that pass; the very list where all do. */
function keep<T>(list: Maybe<T[]>, passes: (element: T) => boolean): Maybe<T[]> {
  return !list || list.every(passes) ? list : list.filter(passes);
}

/** Each element mended; the very list where none needed it. */
function each<T>(list: Maybe<T[]>, mend: (element: T) => T): Maybe<T[]> {
  const mended = list?.map(mend);
  return !list || mended?.every((element, index) => element === list[index]) ? list : mended;
}

/** The record with these fields; the very record where it has them already. Undefined leaves a field out. */
function patch<T extends object>(record: T, fields: { [K in keyof T]?: T[K] | undefined }): T {
  const held = new Map(Object.entries(record));
  const news = Object.entries(fields).filter(([name, value]) => !same(held.get(name), value));
  if (news.length === 0) return record;
  const all = { ...record, ...Object.fromEntries(news) };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as T; // optional ones only
}

/** A record by market, without the markets that are gone. */
const byMarket = <T>(record: Maybe<Record<string, T>>, { markets }: Known): Maybe<Record<string, T>> =>
  record && Object.fromEntries(Object.entries(record).filter(([market]) => markets.has(market)));

function mendRule(rule: ImportRule, { markets }: Known): ImportRule {
  return Array.isArray(rule.from) ? patch(rule, { from: keep(rule.from, (id) => markets.has(id)) }) : rule;
}

/** A rule that named only markets that are gone goes with them. */
function mendMarket(market: Market, known: Known): Market {
  const rules = each(market.import, (rule) => mendRule(rule, known));
  const kept = keep(rules, (rule) => {
    const before = market.import?.[rules?.indexOf(rule) ?? -1];
    return before === rule || !Array.isArray(rule.from) || rule.from.length > 0;
  });
  return patch(market, { import: kept });
}

const mendParcel = (parcel: Parcel, { markets }: Known): Parcel =>
  patch(parcel, { from: mention(markets, parcel.from), to: mention(markets, parcel.to) });

const mendItem = (item: StashItem, { stash, kits, photos }: Known): StashItem =>
  patch(item, {
    twinOf: keep(item.twinOf, (id) => stash.has(id)),
    fromKit: mention(kits, item.fromKit),
    photos: keep(item.photos, (id) => photos.has(id)),
  });

/** A price of a market that is gone, or an earlier card's that is gone and left no price, says nothing now. */
const isEvidence = (evidence: Evidence, { markets, lines }: Known): boolean =>
  leads(markets, evidence.market) && (leads(lines, evidence.line) || Boolean(evidence.price));

const mendEvidence = (evidence: Evidence, { shops, lines }: Known): Evidence =>
  patch(evidence, { shop: mention(shops, evidence.shop), line: mention(lines, evidence.line) });

const mendLine = (line: Line, known: Known): Line =>
  patch(line, {
    evidence: each(
      keep(line.evidence, (one) => isEvidence(one, known)),
      (one) => mendEvidence(one, known),
    ),
    settled: keep(line.settled, ({ market }) => leads(known.markets, market)),
  });

const mendTier = (tier: Tier, known: Known): Tier =>
  patch(tier, {
    markets: keep(tier.markets, (id) => known.markets.has(id)),
    postageTo: byMarket(tier.postageTo, known),
  });

function mendKit(kit: Kit, known: Known): Kit {
  const lines = idsOf(kit.lines);
  return patch(kit, {
    spokenMarket: mention(known.markets, kit.spokenMarket),
    shipsFrom: mention(known.markets, kit.shipsFrom),
    errata: each(kit.errata, (erratum) =>
      patch(erratum, { lines: keep(erratum.lines, (line) => lines.has(line)) }),
    ),
    tiers: each(kit.tiers, (tier) => mendTier(tier, known)),
    lines: each(kit.lines, (line) => mendLine(line, known)),
  });
}

function mendRemake(remake: Remake, { stash, lines, photos }: Known): Remake {
  const ofKit = ({ line }: { line?: Maybe<string> }) =>
    line === null || line === undefined || lines.has(`${remake.kit}/${line}`);
  const ofStash = (use: { stash?: Maybe<string> }) => leads(stash, use.stash);
  return patch(remake, {
    picks: each(keep(remake.picks, ofKit), (pick) => patch(pick, { uses: keep(pick.uses, ofStash) })),
    verdicts: keep(remake.verdicts, ofKit),
    entries: each(remake.entries, (entry) => patch(entry, { picks: keep(entry.picks, ofKit) })),
    essentials: keep(remake.essentials, ofStash),
    shownOnly: keep(remake.shownOnly, ofStash),
    photos: keep(remake.photos, (id) => photos.has(id)),
  });
}

/** What cannot be without something that is gone: a shop without its market, a remake without its kit. */
function withoutOrphans(book: Workbook): Workbook {
  const [markets, kits] = [idsOf(book.markets), idsOf(book.kits)];
  return patch(book, {
    shops: keep(book.shops, ({ market }) => markets.has(market)),
    remakes: keep(book.remakes, ({ kit }) => kits.has(kit)),
  });
}

/**
 * The book without mentions of what is no longer in it: a file with such mentions would be refused. Records
 * and lists that needed no mending are the very same.
 */
export function mend(given: Workbook): Workbook {
  const book = withoutOrphans(given);
  const known = knownIn(book);
  return patch(book, {
    home:
      book.home &&
      patch(book.home, {
        market: mention(known.markets, book.home.market),
        reportMarkets: keep(book.home.reportMarkets, (id) => known.markets.has(id)),
      }),
    markets: each(book.markets, (market) => mendMarket(market, known)),
    shops: each(book.shops, (shop) => patch(shop, { postageTo: byMarket(shop.postageTo, known) })),
    parcels: each(book.parcels, (parcel) => mendParcel(parcel, known)),
    stash: each(book.stash, (item) => mendItem(item, known)),
    kits: each(book.kits, (kit) => mendKit(kit, known)),
    remakes: each(book.remakes, (remake) => mendRemake(remake, known)),
    requests: each(book.requests, (request) => patch(request, { kit: mention(known.kits, request.kit) })),
  });
}
