import type { Fault } from "../record/index.ts";
import { at, type Cursor, each, keysOf, textAt } from "./cursor.ts";

type Ids = ReadonlySet<string>;

const idsOf = (records: readonly Cursor[]): Ids =>
  new Set(records.map((record) => textAt(at(record, "id"))).filter((id) => id !== null));

/** The later of two equal ids in one list. */
function doubles(records: readonly Cursor[]): readonly Fault[] {
  const seen = new Set<string>();
  return records.flatMap((record) => {
    const id = at(record, "id");
    const text = textAt(id);
    if (text === null || !seen.has(text)) {
      if (text !== null) seen.add(text);
      return [];
    }
    return [
      { place: id.place, problem: `"${text}" stands twice in this list`, remedy: "give it an id of its own" },
    ];
  });
}

/** A fault for every mention of an id that its list does not have. An empty one is said by the schemas. */
function dangling(mentions: readonly Cursor[], ids: Ids, what: string): readonly Fault[] {
  return mentions.flatMap((mention) => {
    const id = textAt(mention);
    if (!id || ids.has(id)) return [];
    return [
      {
        place: mention.place,
        problem: `there is no ${what} "${id}"`,
        remedy: `name a ${what} of this workbook`,
      },
    ];
  });
}

type Lists = Readonly<{ markets: Ids; shops: Ids; photos: Ids; stash: Ids; kits: Ids; lines: Ids }>;

const topLists = [
  "markets",
  "shops",
  "parcels",
  "kinships",
  "photos",
  "stash",
  "kits",
  "remakes",
  "requests",
];

/** Every line of every kit as `kit/line`. */
const lineIds = (kits: readonly Cursor[]): Ids =>
  new Set(
    kits.flatMap((kit) =>
      [...idsOf(each(kit, "lines"))].map((line) => `${textAt(at(kit, "id")) ?? ""}/${line}`),
    ),
  );

function inMarkets(root: Cursor, { markets }: Lists): readonly Fault[] {
  const home = at(root, "home");
  const mentions = [
    at(home, "market"),
    ...each(home, "reportMarkets"),
    ...each(root, "markets").flatMap((market) =>
      each(market, "import").flatMap((rule) => each(rule, "from")),
    ),
    ...each(root, "shops").flatMap((shop) => [at(shop, "market"), ...keysOf(shop, "postageTo")]),
    ...each(root, "parcels").flatMap((parcel) => [at(parcel, "from"), at(parcel, "to")]),
  ];
  return dangling(mentions, markets, "market");
}

function inStash(root: Cursor, lists: Lists): readonly Fault[] {
  const items = each(root, "stash");
  return [
    ...dangling(
      items.flatMap((item) => each(item, "twinOf")),
      lists.stash,
      "stash item",
    ),
    ...dangling(
      items.map((item) => at(item, "fromKit")),
      lists.kits,
      "kit",
    ),
    ...dangling(
      items.flatMap((item) => each(item, "photos")),
      lists.photos,
      "photo",
    ),
    ...dangling(
      each(root, "requests").map((request) => at(request, "kit")),
      lists.kits,
      "kit",
    ),
  ];
}

function missingPrice(evidence: Cursor): readonly Fault[] {
  const kind = textAt(at(evidence, "kind"));
  const price = at(evidence, "price");
  if (kind === null || kind === "precedent" || kind === "not-sold") return [];
  if (price.value !== undefined && price.value !== null) return [];
  return [
    {
      place: price.place,
      problem: "missing",
      remedy: "give the price that was seen, an amount and a currency",
    },
  ];
}

function inLine(line: Cursor, lists: Lists): readonly Fault[] {
  const evidence = each(line, "evidence");
  const settled = each(line, "settled");
  return [
    ...doubles(evidence),
    ...evidence.flatMap(missingPrice),
    ...dangling(
      [...evidence, ...settled].map((entry) => at(entry, "market")),
      lists.markets,
      "market",
    ),
    ...dangling(
      evidence.map((entry) => at(entry, "shop")),
      lists.shops,
      "shop",
    ),
    ...dangling(
      evidence.map((entry) => at(entry, "line")),
      lists.lines,
      "line (kit/line)",
    ),
  ];
}

function inKit(kit: Cursor, lists: Lists): readonly Fault[] {
  const [tiers, lines] = [each(kit, "tiers"), each(kit, "lines")];
  const markets = [
    at(kit, "spokenMarket"),
    at(kit, "shipsFrom"),
    ...tiers.flatMap((tier) => [...keysOf(tier, "postageTo"), ...each(tier, "markets")]),
  ];
  return [
    ...doubles(tiers),
    ...doubles(lines),
    ...dangling(markets, lists.markets, "market"),
    ...dangling(
      each(kit, "errata").flatMap((erratum) => each(erratum, "lines")),
      idsOf(lines),
      "line of this kit",
    ),
    ...lines.flatMap((line) => inLine(line, lists)),
  ];
}

function inRemake(remake: Cursor, kits: readonly Cursor[], lists: Lists): readonly Fault[] {
  const kitId = textAt(at(remake, "kit"));
  const kit = kits.find((candidate) => textAt(at(candidate, "id")) === kitId);
  const picks = each(remake, "picks");
  const theirs = each(remake, "entries").flatMap((entry) => each(entry, "picks"));
  const lines = [...picks, ...theirs, ...each(remake, "verdicts")].map((record) => at(record, "line"));
  const stash = [
    ...picks.flatMap((pick) => each(pick, "uses")),
    ...each(remake, "essentials"),
    ...each(remake, "shownOnly"),
  ];
  return [
    ...dangling([at(remake, "kit")], lists.kits, "kit"),
    ...(kit ? dangling(lines, idsOf(each(kit, "lines")), "line of this kit") : []),
    ...dangling(
      stash.map((record) => at(record, "stash")),
      lists.stash,
      "stash item",
    ),
    ...dangling(each(remake, "photos"), lists.photos, "photo"),
  ];
}

/**
 * What single fields cannot show: ids that stand twice or lead nowhere, and evidence without its price.
 * Others' entries name items of their own stash, so those are not looked up here.
 */
export function faultsBetween(document: unknown): readonly Fault[] {
  const root: Cursor = { value: document, place: "" };
  const kits = each(root, "kits");
  const lists: Lists = {
    markets: idsOf(each(root, "markets")),
    shops: idsOf(each(root, "shops")),
    photos: idsOf(each(root, "photos")),
    stash: idsOf(each(root, "stash")),
    kits: idsOf(kits),
    lines: lineIds(kits),
  };
  return [
    ...topLists.flatMap((list) => doubles(each(root, list))),
    ...inMarkets(root, lists),
    ...inStash(root, lists),
    ...kits.flatMap((kit) => inKit(kit, lists)),
    ...each(root, "remakes").flatMap((remake) => inRemake(remake, kits, lists)),
  ];
}
