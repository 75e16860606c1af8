import { foldText } from "./fold.ts";
import { type Identity, identityOf, keyOf, sameIdentity } from "./identity.ts";
import { lineKey, type Place } from "./links.ts";
import { file } from "./multimap.ts";
import type { StashItem, Supply } from "./schema.ts";

/** A supply with what it goes by worked out once. */
export type Known = Readonly<{ identity: Identity; places: readonly Place[] }>;

/** A stash item as the index holds it: `at` is its place in the stash. */
export type Shelved = Known & Readonly<{ at: number; item: StashItem }>;

/** The stash, indexed by everything that can tie two products together. */
export type Shelves = Readonly<{
  same: (identity: Identity) => readonly Shelved[];
  at: (place: Place) => readonly Shelved[];
  /** Twins that the items name themselves (`twinOf`), either way round. */
  twins: (shelved: Shelved) => readonly Shelved[];
}>;

export const placeKey = ({ line, by, value }: Place): string => keyOf(line, by, value);

function placesOf(supply: Supply): readonly Place[] {
  const line = lineKey(foldText(supply.maker), foldText(supply.line));
  if (line === null) return [];
  const [code, name] = [foldText(supply.code), foldText(supply.name)];
  const named: Place[] = name ? [{ line, by: "name", value: name }] : [];
  return code ? [{ line, by: "code", value: code }, ...named] : named;
}

export const know = (supply: Supply): Known => ({ identity: identityOf(supply), places: placesOf(supply) });

function indexBy(stash: readonly Shelved[], keysOf: (shelved: Shelved) => readonly string[]) {
  const map = new Map<string, Shelved[]>();
  for (const shelved of stash) for (const key of keysOf(shelved)) file(map, key, shelved);
  return map;
}

const identityKeys = ({ gtin, coded, plain }: Identity): readonly string[] => [
  ...(gtin === null ? [] : [`gtin ${gtin}`]),
  ...(coded === null ? [] : [`coded ${coded}`]),
  `plain ${plain}`,
];

function indexTwins(stash: readonly Shelved[]) {
  const byId = new Map(stash.map((shelved) => [shelved.item.id, shelved]));
  const twins = new Map<Shelved, Shelved[]>();
  for (const here of stash) {
    for (const id of here.item.twinOf ?? []) {
      const there = byId.get(id);
      if (!there || there === here) continue;
      file(twins, here, there);
      file(twins, there, here);
    }
  }
  return twins;
}

export function shelvesOf(items: readonly StashItem[]): Shelves {
  const stash = items.map((item, at): Shelved => ({ ...know(item.supply), at, item }));
  const byIdentity = indexBy(stash, ({ identity }) => identityKeys(identity));
  const byPlace = indexBy(stash, ({ places }) => places.map(placeKey));
  const twins = indexTwins(stash);
  return {
    same: (identity) =>
      identityKeys(identity)
        .flatMap((key) => byIdentity.get(key) ?? [])
        .filter((shelved) => sameIdentity(identity, shelved.identity)),
    at: (place) => byPlace.get(placeKey(place)) ?? [],
    twins: (shelved) => twins.get(shelved) ?? [],
  };
}
