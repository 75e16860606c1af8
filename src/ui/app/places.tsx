import { lazy, type ReactNode, Suspense } from "react";
import { ButtonLink, Empty, Page } from "../parts/index.ts";
import { words } from "../words/index.ts";
import type { Route } from "./route.ts";

const PartsPage = lazy(() =>
  import("../parts-page/parts-page.tsx").then((module) => ({ default: module.PartsPage })),
);

const KitsPage = lazy(() => import("../kits/kits-page.tsx").then((module) => ({ default: module.KitsPage })));
const KitScreen = lazy(() =>
  import("../kits/kit-screen.tsx").then((module) => ({ default: module.KitScreen })),
);

const RemakesScreen = lazy(() =>
  import("../remakes/list/remakes-screen.tsx").then((module) => ({ default: module.RemakesScreen })),
);
const RemakeScreen = lazy(() =>
  import("../remakes/remake-screen.tsx").then((module) => ({ default: module.RemakeScreen })),
);

const DeskScreen = lazy(() =>
  import("../desk/desk-screen.tsx").then((module) => ({ default: module.DeskScreen })),
);
const StashScreen = lazy(() =>
  import("../stash/stash-screen.tsx").then((module) => ({ default: module.StashScreen })),
);

const MarketsPage = lazy(() =>
  import("../markets/markets-page.tsx").then((module) => ({ default: module.MarketsPage })),
);
const KeepSafePage = lazy(() =>
  import("../keep-safe/keep-safe-page.tsx").then((module) => ({ default: module.KeepSafePage })),
);

const WordsPage = lazy(() =>
  import("../words-page/words-page.tsx").then((module) => ({ default: module.WordsPage })),
);

type Screens = Readonly<{ [Name in Route["name"]]: (route: Extract<Route, { name: Name }>) => ReactNode }>;

/**
 * Each address and what it shows: the one place where a screen is wired in. Load a screen with `lazy`, so that
 * the first visit is light, and give it `key={route.id}` where it is about one thing, so that it starts afresh.
 */
const screens: Screens = {
  desk: () => <DeskScreen />,
  kits: () => <KitsPage />,
  kit: ({ id, tab }) => <KitScreen key={id} id={id} tab={tab} />,
  stash: () => <StashScreen chosen={null} />,
  "stash-item": ({ id }) => <StashScreen chosen={id} />,
  remakes: () => <RemakesScreen />,
  remake: ({ id, tab }) => <RemakeScreen key={id} id={id} tab={tab} />,
  markets: () => <MarketsPage />,
  "keep-safe": () => <KeepSafePage />,
  words: () => <WordsPage />,
  parts: () => <PartsPage />,
  nowhere: () => <Nowhere />,
};

/** The screen of a route. */
export function Screen({ route }: Readonly<{ route: Route }>) {
  // The table is keyed by the name the route itself carries; TypeScript cannot follow that through a union.
  const screen = screens[route.name] as (route: Route) => ReactNode;
  return <Suspense fallback={null}>{screen(route)}</Suspense>;
}

function Nowhere() {
  return (
    <Page place={words.places.nowhere} title={words.places.nowhere}>
      <Empty title={words.unknownPage} act={<ButtonLink to={{ name: "desk" }}>{words.toDesk}</ButtonLink>} />
    </Page>
  );
}
