import { useMemo } from "react";
import type { Kit, Market } from "../../engine/worth/index.ts";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { useAddressValue, withAddressValue } from "../app/navigate.ts";
import { KitFrame } from "../kits/kit-frame.tsx";
import { Tabs } from "../parts/index.ts";
import { worthWords as words } from "../words/worth.ts";
import { Beside } from "./beside.tsx";
import { Chart } from "./chart.tsx";
import { copyTable } from "./copy.ts";
import { LinesTable } from "./lines-table.tsx";
import { Missing } from "./missing.tsx";
import { TiersTable } from "./tiers-table.tsx";
import { chartOf } from "./view/chart.ts";
import { copiedLines, copiedTiers } from "./view/copied.ts";
import { findingOf } from "./view/finding.ts";
import { notesOf } from "./view/notes.ts";
import { marketShown, marketsShown, type Scene, worthIn } from "./view/scene.ts";
import styles from "./worth.module.css";

/** A kit's worth: does it pay, in which market, on which tier, and how each figure came about. */
export function KitWorth({ kit }: Readonly<{ kit: Kit }>) {
  const book = useBook((state) => state.book);
  const [asked] = useAddressValue("market");
  const worth = useMemo(() => worthIn(book, kit, asked), [book, kit, asked]);
  const scene = worth.kind === "ready" ? worth.scene : null;
  const finding = useMemo(() => scene && findingOf(scene), [scene]);
  const lead = worth.kind === "no-rates" ? words.missing.lead(worth.market.name) : finding?.lead;
  const shown = marketShown(book, kit, asked);
  return (
    <KitFrame
      kit={kit}
      tab="worth"
      lead={lead}
      leadMore={finding?.more}
      note={scene && notesOf(scene).map((text) => <p key={text}>{text}</p>)}
    >
      {(scene || worth.kind === "no-rates") && (
        <MarketTabs markets={marketsShown(book, asked)} shown={shown?.id ?? null} />
      )}
      {worth.kind === "ready" ? (
        <Figures key={worth.scene.market.id} scene={worth.scene} />
      ) : (
        <Missing kit={kit} worth={worth} />
      )}
    </KitFrame>
  );
}

function MarketTabs({ markets, shown }: Readonly<{ markets: readonly Market[]; shown: string | null }>) {
  if (markets.length < 2) return null;
  return (
    <div className={styles.markets}>
      <Tabs
        kind="view"
        label={words.marketsLabel}
        tabs={markets.map(({ id, name, currency }) => ({
          label: name,
          more: currency,
          to: withAddressValue("market", id),
          current: id === shown,
        }))}
      />
    </div>
  );
}

function Figures({ scene }: Readonly<{ scene: Scene }>) {
  const chart = useMemo(() => chartOf(scene), [scene]);
  useOffer(
    useMemo(
      () => [
        { name: words.copy.offer, run: () => void copyTable(copiedTiers(scene)) },
        { name: words.copy.offerLines, run: () => void copyTable(copiedLines(scene)) },
      ],
      [scene],
    ),
  );
  return (
    <>
      <Chart chart={chart} />
      <TiersTable scene={scene} />
      <LinesTable scene={scene} />
      <Beside scene={scene} />
    </>
  );
}
