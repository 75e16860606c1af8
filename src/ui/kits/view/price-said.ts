import { currenciesOfSign, currencyCodes, type Money } from "../../../engine/money/index.ts";
import type { Evidence } from "../../../engine/price/index.ts";
import type { WrittenPrice } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";

/** What a price in a line is evidence of: the sender's own claim, or a price that somebody saw. */
export const saidKinds = ["card", "shop", "list"] as const;
export type SaidKind = (typeof saidKinds)[number];

const isCode = (sign: string): boolean => (currencyCodes as readonly string[]).includes(sign);

/**
 * The currencies a price may be in, the likeliest first: those of one's own markets, home before the others.
 * @returns one where there is no doubt; more where a person has to say
 */
export function currenciesOf({ sign }: WrittenPrice, { markets, home }: Workbook): readonly string[] {
  const meant = isCode(sign) ? [sign] : currenciesOfSign(sign);
  const rank = (code: string): number => {
    const own = (markets ?? []).filter(({ currency }) => currency === code);
    if (own.some(({ id }) => id === home?.market)) return 0;
    return own.length > 0 ? 1 : 2;
  };
  return meant.toSorted((a, b) => rank(a) - rank(b));
}

/** The price as a price found. A shop or list price belongs to the one market with that currency, if there is one. */
export function evidenceSaid(
  id: string,
  price: Money,
  kind: SaidKind,
  source: string | null,
  today: string,
  { markets }: Workbook,
): Evidence {
  const own = (markets ?? []).filter(({ currency }) => currency === price.currency);
  const market = kind !== "card" && own.length === 1 ? own[0]?.id : undefined;
  return {
    id,
    kind,
    price,
    ...(market ? { market } : {}),
    date: today,
    ...(source ? { source } : {}),
  };
}
