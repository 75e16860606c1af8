import { lazy, Suspense } from "react";
import { ButtonLink } from "../parts/index.ts";
import { kitsWords } from "../words/kits.ts";
import styles from "./markets.module.css";

// Most kits have their market and their rates: the forms come when they are wanted.
const NewMarket = lazy(() => import("./new-market.tsx").then((module) => ({ default: module.NewMarket })));
const NewRates = lazy(() => import("./new-rates.tsx").then((module) => ({ default: module.NewRates })));

const toMarkets = (
  <ButtonLink to={{ name: "markets" }} kind="quiet">
    {kitsWords.prices.toMarkets}
  </ButtonLink>
);

/** Where one lives, asked where it is missed. */
export const AskMarket = () => (
  <div className={styles.asked}>
    <Suspense fallback={null}>
      <NewMarket asked={0} />
    </Suspense>
    {toMarkets}
  </div>
);

/** The rates of a day, asked where they are missed. */
export const AskRates = ({ day }: Readonly<{ day?: string | null | undefined }>) => (
  <div className={styles.asked}>
    <Suspense fallback={null}>
      <NewRates asked={0} day={day ?? undefined} />
    </Suspense>
    {toMarkets}
  </div>
);
