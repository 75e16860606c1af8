import {
  foldText,
  type Identity,
  identityOf,
  type StashItem,
  type Supply,
  sameIdentity,
} from "../supply/index.ts";

type Owned = Readonly<{ item: StashItem; identity: Identity }>;

/** What two supplies must share to be one product: any of these. */
const cluesOf = ({ gtin, coded, plain }: Identity): readonly string[] => [
  ...(gtin === null ? [] : [`gtin ${gtin}`]),
  ...(coded === null ? [] : [`code ${coded}`]),
  `plain ${plain}`,
];

const samePlace = (a: string | null | undefined, b: string | null | undefined): boolean =>
  foldText(a) === foldText(b);

const sameHex = (a: Supply, b: Supply): boolean => {
  const [one, other] = [a.colour?.hex?.toLowerCase(), b.colour?.hex?.toLowerCase()];
  return !one || !other || one === other;
};

/** How a row stands to the stash: brought in before under its key, or the same product in the same place. */
export type Standing = Readonly<{ item: StashItem; by: "key" | "product" }>;

/** Looks rows up in a stash, each in the time of one look. */
export function standings(stash: readonly StashItem[]) {
  const byKey = new Map<string, StashItem>();
  const byClue = new Map<string, Owned[]>();
  for (const item of stash) {
    if (typeof item.importKey === "string") byKey.set(item.importKey, item);
    const owned = { item, identity: identityOf(item.supply) };
    for (const clue of cluesOf(owned.identity)) {
      const known = byClue.get(clue);
      if (known) known.push(owned);
      else byClue.set(clue, [owned]);
    }
  }
  return (key: string, supply: Supply, place: string | undefined): Standing | null => {
    const before = byKey.get(key);
    if (before) return { item: before, by: "key" };
    const identity = identityOf(supply);
    const same = cluesOf(identity)
      .flatMap((clue) => byClue.get(clue) ?? [])
      .find(
        (owned) =>
          sameIdentity(owned.identity, identity) &&
          samePlace(owned.item.place, place) &&
          sameHex(owned.item.supply, supply),
      );
    return same ? { item: same.item, by: "product" } : null;
  };
}
