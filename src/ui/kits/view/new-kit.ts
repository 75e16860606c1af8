import { daysBetween } from "../../../engine/record/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";

/** What is asked of a new kit. `valuedOn`: the day its prices count as of; null: to be asked later. */
export type KitDraft = Readonly<{
  maker: string;
  period: string;
  title: string | null;
  valuedOn: string | null;
}>;

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

const lastDay = (period: string): string => {
  const [year = 0, month = 0] = period.split("-").map(Number);
  return new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10); // day 0 of the next month
};

/** So long after its month a kit is still likely to be priced as of the day it is logged. */
const recentDays = 62;

/** Whether a kit's month (`YYYY-MM`) lies so far back that today's prices say little of what it was worth then. */
export const isOld = (period: string, today: string): boolean =>
  daysBetween(lastDay(period), today) > recentDays;

/** The day a new kit's prices most likely count as of: today, or for an old kit the end of its month. */
export const likelyDay = (period: string, today: string): string =>
  isOld(period, today) ? lastDay(period) : today;

/** A new kit; `before` gives its tiers and where it ships from. */
export function newKit(id: string, draft: KitDraft, today: string, before: Kit | null): Kit {
  return {
    id,
    maker: draft.maker,
    ...(draft.title ? { title: draft.title } : {}),
    period: draft.period,
    loggedOn: today,
    ...(draft.valuedOn ? { valuedOn: draft.valuedOn } : {}),
    ...(before?.shipsFrom ? { shipsFrom: before.shipsFrom } : {}),
    ...(before?.tiers?.length ? { tiers: before.tiers } : {}),
    lines: [],
  };
}
