import type { ReactNode } from "react";
import { ButtonLink, Empty, Page } from "../parts/index.ts";
import { PartsPage } from "../parts-page/parts-page.tsx";
import { words } from "../words/index.ts";
import { placeOf, type Route } from "./route.ts";

type Screens = Readonly<{ [Name in Route["name"]]: (route: Extract<Route, { name: Name }>) => ReactNode }>;

/** Each address and what it shows: the one place where a screen is wired in. */
const screens: Screens = {
  desk: (route) => <NotYet route={route} />,
  kits: (route) => <NotYet route={route} />,
  kit: (route) => <NotYet route={route} />,
  stash: (route) => <NotYet route={route} />,
  "stash-item": (route) => <NotYet route={route} />,
  remakes: (route) => <NotYet route={route} />,
  remake: (route) => <NotYet route={route} />,
  markets: (route) => <NotYet route={route} />,
  "keep-safe": (route) => <NotYet route={route} />,
  parts: () => <PartsPage />,
  nowhere: () => <Nowhere />,
};

/** The screen of a route. */
export function Screen({ route }: Readonly<{ route: Route }>) {
  // The table is keyed by the name the route itself carries; TypeScript cannot follow that through a union.
  const screen = screens[route.name] as (route: Route) => ReactNode;
  return screen(route);
}

function NotYet({ route }: Readonly<{ route: Route }>) {
  const place = words.places[placeOf(route)];
  return (
    <Page place={place} title={place}>
      <Empty title={words.notYet(place)} />
    </Page>
  );
}

function Nowhere() {
  return (
    <Page place={words.places.nowhere} title={words.places.nowhere}>
      <Empty title={words.unknownPage} act={<ButtonLink to={{ name: "desk" }}>{words.toDesk}</ButtonLink>} />
    </Page>
  );
}
