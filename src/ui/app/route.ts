/**
 * The addresses of the app, typed: `parseRoute` reads one, `hrefOf` writes one, and the two are inverse.
 * Ids may hold any character, so they are percent-encoded in the path.
 */
export const kitTabs = ["contents", "prices", "worth"] as const;
export const remakeTabs = ["stand-ins", "bench", "verdict", "write-up"] as const;

export type KitTab = (typeof kitTabs)[number];
export type RemakeTab = (typeof remakeTabs)[number];

export type Route =
  | Readonly<{ name: "desk" | "kits" | "stash" | "remakes" | "markets" | "keep-safe" | "parts" | "words" }>
  | Readonly<{ name: "kit"; id: string; tab: KitTab }>
  | Readonly<{ name: "stash-item"; id: string }>
  | Readonly<{ name: "remake"; id: string; tab: RemakeTab }>
  | Readonly<{ name: "nowhere"; path: string }>;

/** The six places of the fore-edge, and the sheet of parts and our words, which hang on none. */
export type Place =
  | "desk"
  | "kits"
  | "stash"
  | "remakes"
  | "markets"
  | "keepSafe"
  | "parts"
  | "words"
  | "nowhere";

const plain = ["kits", "stash", "remakes", "markets", "keep-safe", "parts", "words"] as const;

/** Reads a path; a kit or remake without a tab opens on its first one. Never throws. */
export function parseRoute(path: string): Route {
  const pieces = path.split("/").filter((piece) => piece !== "");
  const [place, rawId, rawTab] = pieces;
  const id = rawId === undefined ? null : decoded(rawId);
  if (place === undefined) return { name: "desk" };
  if (id === null) {
    const name = pieces.length === 1 ? plain.find((known) => known === place) : undefined;
    return name ? { name } : { name: "nowhere", path };
  }
  return (pieces.length > 3 ? undefined : withId(place, id, rawTab)) ?? { name: "nowhere", path };
}

function withId(place: string, id: string, rawTab: string | undefined): Route | undefined {
  const kitTab = kitTabs.find((tab) => tab === (rawTab ?? kitTabs[0]));
  const remakeTab = remakeTabs.find((tab) => tab === (rawTab ?? remakeTabs[0]));
  if (place === "kits" && kitTab) return { name: "kit", id, tab: kitTab };
  if (place === "remakes" && remakeTab) return { name: "remake", id, tab: remakeTab };
  if (place === "stash" && rawTab === undefined) return { name: "stash-item", id };
  return undefined;
}

function decoded(piece: string): string | null {
  try {
    const id = decodeURIComponent(piece);
    return /^~+\.{1,2}$/.test(id) ? id.slice(1) : id;
  } catch {
    return null; // a lone % in a mistyped address
  }
}

/** An id as one piece of a path. "." and ".." would be taken for steps up, even encoded: they get a mark. */
const encoded = (id: string): string => encodeURIComponent(/^~*\.{1,2}$/.test(id) ? `~${id}` : id);

/** The address of a route. */
export function hrefOf(route: Route): string {
  switch (route.name) {
    case "desk":
      return "/";
    case "kit":
      return `/kits/${encoded(route.id)}/${route.tab}`;
    case "stash-item":
      return `/stash/${encoded(route.id)}`;
    case "remake":
      return `/remakes/${encoded(route.id)}/${route.tab}`;
    case "nowhere":
      return route.path;
    default:
      return `/${route.name}`;
  }
}

/** The place of the fore-edge that a route belongs to. */
export function placeOf(route: Route): Place {
  switch (route.name) {
    case "kit":
      return "kits";
    case "stash-item":
      return "stash";
    case "remake":
      return "remakes";
    case "keep-safe":
      return "keepSafe";
    default:
      return route.name;
  }
}
