import type { Relation, StashItem } from "../supply/index.ts";
import type { Pick, Rules } from "./schema.ts";

/** Why an item does not stand in, though it is shown. */
export type LeftOut = "received-before" | "acquired-after" | "empty" | "dried" | `in-use:${string}`;

/** What the rules of the game ask of a kit and its remake. Dates are ISO 8601, compared as text. */
export type Game = Readonly<{
  loggedOn: string | null;
  started: string | null;
  received: boolean;
  twinsAllowed: boolean;
}>;

type KitDates = Readonly<{ loggedOn?: string | null | undefined; received?: boolean | null | undefined }>;
type RemakeRules = Readonly<{
  started: string;
  rules?: Rules | null | undefined;
  picks?: readonly Pick[] | null | undefined;
}>;

/** The run of the challenge that a match is for: its start, its switches and a person's picks. */
export type MatchRemake = RemakeRules;

export const gameOf = (kit: KitDates, remake: MatchRemake | null | undefined): Game => ({
  loggedOn: kit.loggedOn ?? null,
  started: remake?.started ?? null,
  received: kit.received ?? false,
  twinsAllowed: remake?.rules?.twins ?? false,
});

/**
 * How many lines an item can serve: sheets left of a pad where they are counted, else the pieces owned.
 * Empty and dried ones serve none.
 */
export function capacityOf({ state, owned, sheetsLeft, supply }: StashItem): number {
  if (state === "empty" || state === "dried" || owned === 0) return 0;
  return (supply.family === "paper" ? sheetsLeft : null) ?? owned ?? 1;
}

const isAfter = (date: string, limit: string | null): boolean => limit !== null && date > limit;

/** Rule 1: bought after the kit was known or the remake begun, unless it was not bought for this. */
const isLate = ({ acquired, boughtForThis }: StashItem, { loggedOn, started }: Game): boolean =>
  boughtForThis !== false && !!acquired && (isAfter(acquired, loggedOn) || isAfter(acquired, started));

/** Rule 2: in a kit once received, the very same product and its twins are for somebody else's remake. */
const wasReceived = (relation: Relation | null, { received, twinsAllowed }: Game): boolean =>
  received && (relation === "same" || (relation === "twin" && !twinsAllowed));

/** What is wrong with the item itself or with the rules, before it is asked who else uses it. */
export function reasonToLeaveOut(item: StashItem, relation: Relation | null, game: Game): LeftOut | null {
  if (item.state === "dried") return "dried";
  if (capacityOf(item) === 0) return "empty";
  if (isLate(item, game)) return "acquired-after";
  return wasReceived(relation, game) ? "received-before" : null;
}
