import { useMemo } from "react";
import { useBook } from "../../store/index.ts";
import { Page } from "../parts/index.ts";
import { words as common } from "../words/index.ts";
import { marketsWords } from "../words/markets.ts";
import { Home } from "./home.tsx";
import { MarketList } from "./market-list.tsx";
import { Parcels } from "./parcels.tsx";
import { Rates } from "./rates.tsx";
import { Shops } from "./shops.tsx";
import { marketsLead } from "./view/lists.ts";

/** Markets: for whom worth is counted, borders, exchange rates, shops, and parcels of one's own. */
export function MarketsPage() {
  const book = useBook((state) => state.book);
  const { lead, more } = useMemo(() => marketsLead(book), [book]);
  return (
    <Page place={common.places.markets} title={marketsWords.title} lead={lead} leadMore={more}>
      <Home />
      <MarketList />
      <Rates />
      <Shops />
      <Parcels />
    </Page>
  );
}
