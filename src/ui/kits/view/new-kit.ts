import type { Kit } from "../../../engine/worth/index.ts";

/** What is asked of a new kit. */
export type KitDraft = Readonly<{ maker: string; period: string; title: string | null }>;

/** The makers of all kits, each once, the one of the newest kit first. */
export const makersOf = (kits: readonly Kit[]): readonly string[] => [
  ...new Set(kits.toSorted((a, b) => (a.period < b.period ? 1 : -1)).map(({ maker }) => maker)),
];

/** The newest kit of a maker up to a month: what it cost then is likely what it costs now. */
export const kitBefore = (kits: readonly Kit[], { maker, period }: Pick<KitDraft, "maker" | "period">) =>
  kits
    .filter((kit) => kit.maker === maker && kit.period <= period)
    .toSorted((a, b) => (a.period < b.period ? 1 : -1))
    .at(0) ?? null;

/**
 * A new kit. It is valued as of the day it is logged, when its prices are looked for; `before` gives its tiers
 * and where it ships from.
 */
export function newKit(id: string, draft: KitDraft, today: string, before: Kit | null): Kit {
  return {
    id,
    maker: draft.maker,
    ...(draft.title ? { title: draft.title } : {}),
    period: draft.period,
    loggedOn: today,
    valuedOn: today,
    ...(before?.shipsFrom ? { shipsFrom: before.shipsFrom } : {}),
    ...(before?.tiers?.length ? { tiers: before.tiers } : {}),
    lines: [],
  };
}
