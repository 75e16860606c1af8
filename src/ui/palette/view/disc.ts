import type { Lab } from "../../../engine/colour/index.ts";
import type { Box } from "./boxes.ts";
import type { Entry } from "./entries.ts";
import { type Hue, hueWords } from "./hues.ts";
import { type LabelPlace, placeLabels, type Wish } from "./labels.ts";
import type { Measures, Point } from "./room.ts";

/** A word set at a place, by its middle, start or end. */
export type PlacedWord = Readonly<{ text: string; x: number; y: number; anchor: "start" | "middle" | "end" }>;

/** A kit colour and its stand-in in their places. Lines with the very same two colours are one mark, all named. */
export type PlacedPair = Readonly<{
  line: string;
  numbers: readonly number[];
  kit: Point;
  kitHex: string;
  standIn: Point | null;
  standInHex: string | null;
  isMost: boolean;
  label: Point;
  /** From the mark to a label that had to stand off; null where it stands close by. */
  leader: readonly [Point, Point] | null;
}>;

export type Disc = Readonly<{
  width: number;
  height: number;
  centre: Point;
  radius: number;
  rings: readonly Readonly<{ chroma: number; radius: number }>[];
  ticks: readonly (readonly [Point, Point])[];
  words: readonly PlacedWord[];
  /** The rings' figures, along the emptiest direction. */
  figures: readonly PlacedWord[];
  pairs: readonly PlacedPair[];
  mark: number;
}>;

const radians = Math.PI / 180;

/** From the centre in a CIELAB hue direction; screens count downwards. */
const along = (centre: Point, degrees: number, length: number): Point => ({
  x: centre.x + Math.cos(degrees * radians) * length,
  y: centre.y - Math.sin(degrees * radians) * length,
});

const placeOf = ({ a, b }: Lab, centre: Point, unit: number): Point => ({
  x: centre.x + a * unit,
  y: centre.y - b * unit,
});

const lineHeight = 18;
const letterPx = 7.2;
const figurePx = 9;

type Group = Readonly<{ first: Entry; numbers: readonly number[]; lines: readonly string[] }>;

const near = (lab: Lab | undefined): string => (lab ? [lab.l, lab.a, lab.b].map(Math.round).join(" ") : "");

/** Lines whose two colours are the same share their marks, or their numbers would hide each other. */
function grouped(entries: readonly Entry[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const entry of entries) {
    const key = `${near(entry.kit.lab)}/${near(entry.standIn?.lab)}`;
    const { first, numbers, lines } = groups.get(key) ?? { first: entry, numbers: [], lines: [] };
    groups.set(key, { first, numbers: [...numbers, entry.number], lines: [...lines, entry.line] });
  }
  return [...groups.values()];
}

const ringStep = (most: number): number => (most > 90 ? 40 : 20);

const ringsFor = ({ most, unit }: Measures): Disc["rings"] =>
  Array.from({ length: Math.floor(most / ringStep(most)) }, (_, index) => {
    const chroma = (index + 1) * ringStep(most);
    return { chroma, radius: chroma * unit };
  });

const anchorAt = (degrees: number): PlacedWord["anchor"] => {
  const cos = Math.cos(degrees * radians);
  return cos > 0.25 ? "start" : cos < -0.25 ? "end" : "middle";
};

const wordBox = ({ text, x, y, anchor }: PlacedWord, textScale: number): Box => {
  const wide = text.length * letterPx * textScale;
  const left = anchor === "start" ? x : anchor === "end" ? x - wide : x - wide / 2;
  return { left, top: y - 13 * textScale, right: left + wide, bottom: y + 3 * textScale };
};

/** Just outside the outermost ring, upright, its nearest edge towards the ring; moved in where it would be cut. */
function hueWord(centre: Point, radius: number, textScale: number, { name, degrees }: Hue): PlacedWord {
  const at = along(centre, degrees, radius + 10);
  const sin = Math.sin(degrees * radians);
  const word = { text: name, x: at.x, y: at.y + (5 - sin * 6) * textScale, anchor: anchorAt(degrees) };
  const { left, right } = wordBox(word, textScale);
  return { ...word, x: word.x - Math.max(0, right - 2 * centre.x) + Math.max(0, -left) };
}

/** Directions halfway between the hues' names. */
const betweens: readonly number[] = hueWords.map(({ degrees }, index) => {
  const next = hueWords[index + 1]?.degrees ?? (hueWords[0]?.degrees ?? 0) + 360;
  return (degrees + next) / 2;
});

const distance = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);

// Further off than this a mark is no hindrance, in px.
const roomEnough = 60;

/** The direction in which the rings' figures keep furthest from marks. */
function emptiest(rings: Disc["rings"], centre: Point, marks: readonly Point[]): number {
  const free = betweens.map((degrees) =>
    rings
      .map(({ radius }) => along(centre, degrees, radius))
      .map((figure) => Math.min(roomEnough, ...marks.map((mark) => distance(figure, mark))))
      .reduce((sum, room) => sum + room, 0),
  );
  return betweens[free.indexOf(Math.max(...free))] ?? 0;
}

const numbersText = (numbers: readonly number[]): string => numbers.join(", ");

/** From the mark's edge to the label's. */
function leaderOf(from: Point, { at: label, box }: LabelPlace, mark: number): PlacedPair["leader"] {
  const length = distance(from, label);
  const [dx, dy] = [(label.x - from.x) / length, (label.y - from.y) / length];
  const short = Math.min(
    (box.right - box.left) / 2 / Math.max(Math.abs(dx), 0.01),
    (box.bottom - box.top) / 2 / Math.max(Math.abs(dy), 0.01),
  );
  const at = (far: number) => ({ x: from.x + dx * far, y: from.y + dy * far });
  return length - short > mark ? [at(mark), at(length - short + 2)] : null;
}

type Scene = Readonly<{ groups: readonly Group[]; centre: Point; measures: Measures; most: string | null }>;

const kitPlace = ({ centre, measures }: Scene, { first }: Group): Point =>
  placeOf(first.kit.lab, centre, measures.unit);

const standInPlace = ({ centre, measures }: Scene, { first }: Group): Point | null =>
  first.standIn && placeOf(first.standIn.lab, centre, measures.unit);

function pairsIn(scene: Scene, frame: Box, textScale: number, others: readonly Box[]): readonly PlacedPair[] {
  const { groups, centre, measures, most } = scene;
  const spots = groups.map((group) => ({
    group,
    kit: kitPlace(scene, group),
    standIn: standInPlace(scene, group),
  }));
  const wishes = spots.map(({ group, kit, standIn }): Wish => {
    const apart = standIn && distance(kit, standIn) > 1 ? standIn : centre;
    const halfWidth = (numbersText(group.numbers).length * figurePx * textScale) / 2 + 3; // and room between two numbers
    return { at: kit, away: apart, halfWidth, halfHeight: (lineHeight * textScale) / 2 - 1 };
  });
  const marks = spots.flatMap(({ kit, standIn }, owner) => [
    { at: kit, owner },
    ...(standIn ? [{ at: standIn, owner }] : []),
  ]);
  const labels = placeLabels(wishes, measures.mark + 2, {
    frame,
    marks,
    words: others,
    soft: spots.flatMap(({ kit, standIn }) => (standIn ? [{ from: kit, to: standIn }] : [])),
  });
  return spots.flatMap(({ group, kit, standIn }, index) => {
    const label = labels[index];
    if (!label) return [];
    const { first, numbers, lines } = group;
    return {
      line: first.line,
      numbers,
      kit,
      kitHex: first.kit.hex,
      standIn,
      standInHex: first.standIn?.hex ?? null,
      isMost: most !== null && lines.includes(most),
      label: label.at,
      leader: label.stray ? leaderOf(kit, label, measures.mark + 1) : null,
    };
  });
}

/** Hue as direction, strength as distance from the middle: a* to the right, b* upwards, as CIELAB is drawn. */
export function discOf(
  entries: readonly Entry[],
  most: string | null,
  measures: Measures,
  textScale: number,
): Disc {
  const { radius, side, edge, unit, mark } = measures;
  const centre = { x: radius + side, y: radius + edge };
  const [width, height] = [2 * centre.x, 2 * centre.y];
  const rings = ringsFor(measures);
  const words = hueWords.map((hue) => hueWord(centre, radius, textScale, hue));
  const marks = entries.flatMap(({ kit, standIn }) => [kit, ...(standIn ? [standIn] : [])]);
  const degrees = emptiest(
    rings,
    centre,
    marks.map(({ lab }) => placeOf(lab, centre, unit)),
  );
  const figures = rings.map(({ chroma, radius: far }): PlacedWord => {
    const at = along(centre, degrees, far);
    return { text: String(chroma), x: at.x, y: at.y + 4.5 * textScale, anchor: "middle" };
  });
  const taken = [...words, ...figures].map((word) => wordBox(word, textScale));
  return {
    width,
    height,
    centre,
    radius,
    rings,
    ticks: hueWords.map(({ degrees: at }) => [along(centre, at, radius), along(centre, at, radius + 5)]),
    words,
    figures,
    pairs: pairsIn(
      { groups: grouped(entries), centre, measures, most },
      { left: 0, top: 0, right: width, bottom: height },
      textScale,
      taken,
    ),
    mark,
  };
}
