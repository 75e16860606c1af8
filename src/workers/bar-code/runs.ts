/** A picture in greys, 0 black to 255 white, row by row. */
export type Greys = Readonly<{ data: Uint8Array | Uint8ClampedArray; width: number; height: number }>;

/** A turning point of a profile: where, and how light. */
type Turn = Readonly<{ at: number; light: number }>;

/** The lightest and darkest places by turns, where the light between them changes by `step` at least. */
function turnsIn(profile: readonly number[], step: number): readonly Turn[] {
  const turns: Turn[] = [];
  let [lightest, darkest] = [0, 0];
  let rising: boolean | null = null;
  const level = (at: number) => profile[at] ?? 0;
  for (let at = 1; at < profile.length; at += 1) {
    if (level(at) > level(lightest)) lightest = at;
    if (level(at) < level(darkest)) darkest = at;
    if (rising !== false && level(lightest) - level(at) >= step) {
      turns.push({ at: lightest, light: level(lightest) });
      rising = false;
      darkest = at;
    } else if (rising !== true && level(at) - level(darkest) >= step) {
      turns.push({ at: darkest, light: level(darkest) });
      rising = true;
      lightest = at;
    } else if (rising === true) darkest = at;
    else if (rising === false) lightest = at;
  }
  return turns;
}

/** Where a profile passes half-way between two turns, to a part of a pixel. */
function edgeBetween(profile: readonly number[], from: Turn, to: Turn): number {
  const middle = (from.light + to.light) / 2;
  const down = from.light > to.light;
  for (let at = from.at; at < to.at; at += 1) {
    const [here = 0, next = 0] = [profile[at], profile[at + 1]];
    if (down ? here >= middle && next < middle : here <= middle && next > middle)
      return at + (here - middle) / (here - next);
  }
  return (from.at + to.at) / 2;
}

/**
 * The widths of light and dark by turns along a profile, light first: half-way between each lightest and darkest place
 * there is an edge, so that shadow and blur do little.
 * @param share of the profile's own contrast that counts as a turn, 0 to 1
 */
export function runsIn(profile: readonly number[], share: number): readonly number[] {
  const contrast = Math.max(...profile) - Math.min(...profile);
  const turns = turnsIn(profile, Math.max(6, share * contrast));
  const edges = turns.slice(1).flatMap((turn, index) => {
    const before = turns[index];
    return before ? [edgeBetween(profile, before, turn)] : [];
  });
  const [first, second] = turns;
  const startsDark = first !== undefined && second !== undefined && first.light < second.light;
  const bounds = [0, ...edges, profile.length - 1];
  const runs = bounds.slice(1).map((bound, index) => bound - (bounds[index] ?? 0));
  return startsDark ? [0, ...runs] : runs;
}

/** A line across a picture: where it begins, and one step along it, in pixels. */
export type Line = Readonly<{ x: number; y: number; dx: number; dy: number; length: number }>;

/** The greys along a line, each of three side by side: less noise, and bars are long. */
export function profileAlong(
  { data, width, height }: Greys,
  { x, y, dx, dy, length }: Line,
): readonly number[] {
  const at = (px: number, py: number): number => {
    const column = Math.min(width - 1, Math.max(0, Math.round(px)));
    const row = Math.min(height - 1, Math.max(0, Math.round(py)));
    return data[row * width + column] ?? 0;
  };
  return Array.from({ length }, (_, step) => {
    const [px, py] = [x + step * dx, y + step * dy];
    return (at(px, py) + at(px - dy, py + dx) + at(px + dy, py - dx)) / 3;
  });
}
