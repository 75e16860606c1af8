import {
  type KinSide,
  type Kinship,
  type StashItem,
  type Supply,
  sidesOf,
} from "../../../../engine/supply/index.ts";
import { format } from "../../../words/index.ts";
import { kinWords as words } from "../../../words/kin.ts";

/** One of the two, and how many things of the stash are on its side. */
type SideView = Readonly<{ name: string; mine: string }>;

/** A link, ready to print. */
export type KinRow = Readonly<{
  kinship: Kinship;
  one: SideView;
  other: SideView;
  how: string;
  sure: string;
  /** Where it is from, and how they differ to look at, in pale ink. */
  heard: readonly string[];
}>;

type Side = Kinship["a"];

/** "Fjällbrand, Älv, no. 12" */
export function sideText(side: Side): string {
  const parts = [side?.maker, side?.line, side?.code && words.number(side.code)].filter(Boolean);
  return parts.length > 0 ? parts.join(", ") : words.unnamed;
}

function howText({ kind, a, b, by }: Kinship): string {
  const what = kind ? words.kinds[kind] : words.noKind;
  if (a?.code || b?.code) return what;
  return `${what}, ${by === "name" ? words.byName : words.byCode}`;
}

function sideView(stash: readonly StashItem[], kinship: Kinship, side: KinSide): SideView {
  const mine = stash.filter(({ supply }) => sidesOf(kinship, supply).includes(side)).length;
  return { name: sideText(kinship[side]), mine: words.mine(format.count(mine), mine) };
}

/** All links, in the order they were made. */
export const kinRows = (kinships: readonly Kinship[], stash: readonly StashItem[]): readonly KinRow[] =>
  kinships.map((kinship) => ({
    kinship,
    one: sideView(stash, kinship, "a"),
    other: sideView(stash, kinship, "b"),
    how: howText(kinship),
    sure: kinship.sure ? words.sures[kinship.sure] : words.notSaid,
    heard: [
      [kinship.source, kinship.date && format.date(kinship.date)].filter(Boolean).join(", "),
      kinship.looks ?? "",
    ].filter(Boolean),
  }));

/** The links that a supply is on a side of, each said from its side: "Kvist, Ström, no. 40: the same under two labels". */
export const kinOf = (supply: Supply, kinships: readonly Kinship[]): readonly string[] =>
  kinships.flatMap((kinship) =>
    sidesOf(kinship, supply)
      .slice(0, 1)
      .map((side) => `${sideText(side === "a" ? kinship.b : kinship.a)}: ${howText(kinship)}`),
  );
