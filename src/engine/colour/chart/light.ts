import { type Homography, inverseOf, project } from "./homography.ts";
import type { Grid } from "./layout.ts";
import type { Point } from "./shapes.ts";
import type { Scene } from "./sites.ts";
import { readStrips, type Strip, type Strips, spotBox, stripReader } from "./strips.ts";
import { type Departure, departure, lightSurface, lightThrough, median, type Surface } from "./surface.ts";

/** The light over a chart, and the bare places that it was told from. */
export type Light = Readonly<{
  surface: Surface;
  strips: Strips;
  /** Whether the strips between the swatches turned out to be paper. */
  between: boolean;
}>;

/** Why the light could not be told. */
export type NoLight = "no-paper" | "too-bright";

/** Brightness is in natural logs: 0.12 is an eighth more light, or less. */
export const unlike = 0.12;
/** Under a third of the light, or over three times as much, is not paper in another light any more. */
const otherLight = 1.1;

/** Paper lit as elsewhere, or in other light: its tint changes little beside its brightness. Not paint. */
export const isPaper = ({ brightness, tint }: Departure): boolean =>
  Math.abs(brightness) < otherLight && tint < 0.06 + 0.3 * Math.abs(brightness);

type Found = Readonly<{ rim: readonly Strip[]; inner: readonly Strip[]; spots: readonly Strip[] }>;

const isKnown = (strip: Strip | null): strip is Strip => strip !== null;
const isClear = (strip: Strip): boolean => !strip.clipped && strip.share >= 0.2;

/** The strips around the chart apart from those between its swatches. */
function apart({ rows, columns }: Grid, { upright, level }: Strips): Omit<Found, "spots"> {
  const isEnd = (at: number) => at % (columns + 1) === 0 || at % (columns + 1) === columns;
  const isEdge = (at: number) => at < columns || at >= rows * columns;
  const [rim, inner] = [true, false].map((wanted) =>
    [
      ...upright.filter((_, at) => isEnd(at) === wanted),
      ...level.filter((_, at) => isEdge(at) === wanted),
    ].filter(isKnown),
  );
  return { rim: rim ?? [], inner: inner ?? [] };
}

function readSpots(
  read: ReturnType<typeof stripReader>,
  grid: Grid,
  map: Homography,
  spots: readonly Point[],
) {
  const back = inverseOf(map);
  return spots
    .map(({ x, y }) => project(back, x, y))
    .map(({ x, y }) => read(spotBox(grid, x, y)))
    .filter(isKnown);
}

/** With fewer places than this beside the spots, the spots alone tell the light. */
const fewestPlaces = 8;

/** Spots that a person pointed at weigh more than a strip. */
const spotWeight = 4;

/** Places that may be the paper that was pointed at, under up to 2½ times or under 40 % of its light. */
const likeSpots = (spots: readonly Strip[]) => (strip: Strip) =>
  spots.length === 0 ||
  spots.some(({ log }) => {
    const { brightness, tint } = departure(strip, () => log);
    return Math.abs(brightness) < 0.9 && tint < 0.2;
  });

const nearestTo = (place: Strip, others: readonly Strip[]): Strip | undefined => {
  const away = others.map((other) => Math.hypot(other.u - place.u, other.v - place.v));
  return others[away.indexOf(Math.min(...away))];
};

/**
 * Whether places that are surely paper are no brighter than the nearest ones used: beside ruled lines or paint
 * they would be. Neighbours are compared, since a shadow may lie on either.
 */
function agrees(surface: Surface, trusted: readonly Strip[], used: readonly Strip[]): boolean {
  const off = trusted.flatMap((place) => {
    const other = nearestTo(place, used);
    if (!other) return [];
    return departure(place, surface).brightness - departure(other, surface).brightness;
  });
  return off.length === 0 || median(off) <= unlike;
}

/** Whether most of the places lie on the surface: if not, they are no paper, or not one paper. */
const holds = (surface: Surface, places: readonly Strip[]): boolean =>
  2 * places.filter((strip) => isPaper(departure(strip, surface))).length > places.length;

/**
 * The light, from all bare places if they agree with what is surely paper: the spots pointed at, else the strips
 * around the chart. If they do not, from fewer: those around it and the spots; then the spots alone.
 */
function told({ rim, inner, spots }: Found): Omit<Light, "strips"> | null {
  const weighty = spots.map((spot) => ({ ...spot, share: spot.share * spotWeight }));
  const trusted = spots.length > 0 ? spots : rim;
  const tries = [
    { places: [...inner, ...rim, ...weighty], used: inner, between: inner.length > 0 },
    { places: [...rim, ...weighty], used: spots.length > 0 ? rim : [], between: false },
    { places: weighty, used: [], between: false },
  ];
  for (const { places, used, between } of tries) {
    const isThin = spots.length > 0 && places.length - weighty.length < fewestPlaces;
    if (isThin && places !== weighty) continue;
    const surface = places === weighty ? lightThrough(places) : lightSurface(places);
    if (surface && holds(surface, places) && agrees(surface, trusted, used)) return { surface, between };
  }
  return null;
}

/** Reads the paper around the swatches, and the light from it. */
export function readLight(scene: Scene, grid: Grid, spots: readonly Point[]): Light | NoLight {
  const read = stripReader(scene);
  const strips = readStrips(grid, read);
  const pointed = readSpots(read, grid, scene.map, spots);
  const { rim, inner } = apart(grid, strips);
  const all = [...pointed, ...rim, ...inner];
  const clear = pointed.filter(isClear);
  const usable = (places: readonly Strip[]) => places.filter(isClear).filter(likeSpots(clear));
  if (2 * all.filter(({ clipped }) => clipped).length > all.length) return "too-bright";
  const found = told({ rim: usable(rim), inner: usable(inner), spots: clear });
  return found ? { ...found, strips } : "no-paper";
}
