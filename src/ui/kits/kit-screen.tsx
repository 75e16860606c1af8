import { lazy } from "react";
import { useBook } from "../../store/index.ts";
import type { KitTab } from "../app/route.ts";
import { ContentsPage } from "./contents/contents-page.tsx";
import { NoSuchKit } from "./kit-frame.tsx";

const KitWorth = lazy(() =>
  import("../worth/kit-worth.tsx").then((module) => ({ default: module.KitWorth })),
);

const PricesPage = lazy(() =>
  import("./prices/prices-page.tsx").then((module) => ({ default: module.PricesPage })),
);

/** One kit: its contents, its prices, its worth. */
export function KitScreen({ id, tab }: Readonly<{ id: string; tab: KitTab }>) {
  const kit = useBook((state) => state.book.kits?.find((one) => one.id === id));
  if (!kit) return <NoSuchKit />;
  if (tab === "contents") return <ContentsPage kit={kit} />;
  if (tab === "worth") return <KitWorth kit={kit} />;
  return <PricesPage kit={kit} />;
}
