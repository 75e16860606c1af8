import type { ReactNode } from "react";
import { Menu, Notices } from "../parts/index.ts";
import { words } from "../words/index.ts";
import { Finder } from "./finder.tsx";
import styles from "./frame.module.css";
import { Link } from "./link.tsx";
import { go } from "./navigate.ts";
import { type Place, placeOf, type Route } from "./route.ts";

type Name = Exclude<Route["name"], "kit" | "stash-item" | "remake" | "nowhere" | "parts" | "words">;

const edge: readonly Readonly<{ name: Name; place: Place }>[] = [
  { name: "desk", place: "desk" },
  { name: "kits", place: "kits" },
  { name: "stash", place: "stash" },
  { name: "remakes", place: "remakes" },
  { name: "markets", place: "markets" },
  { name: "keep-safe", place: "keepSafe" },
];

/** On a phone the bar has room for five words: these go behind the last of them. */
const behindMore: readonly Place[] = ["markets", "keepSafe"];

type Props = Readonly<{ route: Route; saved: ReactNode; children: ReactNode }>;

/** The open notebook: margin and double rule, the writing column, and the places along the fore-edge. */
export function Frame({ route, saved, children }: Props) {
  return (
    <div className={styles.book}>
      <a href="#page" className={styles.skip}>
        {words.skip}
      </a>
      <div className={styles.leaf}>
        <header className={styles.top}>
          <Link to={{ name: "desk" }} className={styles.product}>
            {words.product}
          </Link>
          <div className={styles.line}>
            <Finder />
            <p className={styles.saved}>{saved}</p>
          </div>
        </header>
        <main id="page" tabIndex={-1} className={styles.main}>
          {children}
        </main>
      </div>
      <Notices />
      <ForeEdge current={placeOf(route)} />
    </div>
  );
}

function ForeEdge({ current }: Readonly<{ current: Place }>) {
  return (
    <nav aria-label={words.placesLabel} className={styles.edge}>
      <ul>
        {edge.map(({ name, place }) => (
          <li key={name} className={behindMore.includes(place) ? styles.behindMore : undefined}>
            <Link to={{ name }} className={styles.tab} aria-current={place === current ? "page" : undefined}>
              {words.places[place]}
            </Link>
          </li>
        ))}
        <li className={styles.moreItem} data-current={behindMore.includes(current) || undefined}>
          <Menu
            label={words.more}
            acts={edge
              .filter(({ place }) => behindMore.includes(place))
              .map(({ name, place }) => ({ label: words.places[place], onPick: () => go({ name }) }))}
          />
        </li>
      </ul>
    </nav>
  );
}
