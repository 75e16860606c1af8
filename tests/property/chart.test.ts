import { describe, expect, it } from "vitest";
// The map alone is no part of the folder's face; it is checked here against a camera and by what it must keep.
import { homographyOf, inverseOf, project } from "../../src/engine/colour/chart/homography.ts";
import { solve } from "../../src/engine/colour/chart/solve.ts";
import { type CellReading, type Corners, deltaE2000, type Picture } from "../../src/engine/colour/index.ts";
import fc from "../chance.ts";
import { photoOf, readingOf } from "../unit/colour/chart-read.ts";
import { cameraOf, photograph } from "../unit/colour/chart-scene.ts";
import { sceneOf } from "../unit/colour/chart-scenes.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });
/** A square with each corner moved by up to a quarter of its side: convex, whatever the moves. */
const corners = fc
  .tuple(fc.integer({ min: 50, max: 4000 }), fc.array(share, { minLength: 8, maxLength: 8 }))
  .map(([side, moves]): Corners => {
    const at = (x: number, y: number, i: number) => ({
      x: side * (1 + x + ((moves[2 * i] ?? 0) - 0.5) / 2.1),
      y: side * (1 + y + ((moves[2 * i + 1] ?? 0) - 0.5) / 2.1),
    });
    return [at(0, 0, 0), at(1, 0, 1), at(1, 1, 2), at(0, 1, 3)];
  });

const mapOf = (of: Corners) => homographyOf(of) ?? expect.unreachable("four corners that span an area");

describe("the map from chart to picture", () => {
  it("takes the corners of the chart to the corners marked", () => {
    fc.assert(
      fc.property(corners, (marked) => {
        const map = mapOf(marked);
        [[0, 0] as const, [1, 0] as const, [1, 1] as const, [0, 1] as const].forEach(([u, v], at) => {
          const { x, y } = project(map, u, v);
          expect(x).toBeCloseTo(marked[at]?.x ?? Number.NaN, 6);
          expect(y).toBeCloseTo(marked[at]?.y ?? Number.NaN, 6);
        });
      }),
    );
  });
  it("has an inverse that takes every place back", () => {
    fc.assert(
      fc.property(corners, share, share, (marked, u, v) => {
        const map = mapOf(marked);
        const { x, y } = project(map, u, v);
        const back = project(inverseOf(map), x, y);
        expect(back.x).toBeCloseTo(u, 8);
        expect(back.y).toBeCloseTo(v, 8);
      }),
    );
  });
  // Source: Hartley & Zisserman, Multiple View Geometry, 2nd ed. (2004), section 2.5: the cross ratio is kept.
  it("keeps the cross ratio of four places on a line", () => {
    fc.assert(
      fc.property(corners, share, share, (marked, u, v) => {
        fc.pre(Math.hypot(u - 0.5, v - 0.5) > 0.05);
        const map = mapOf(marked);
        const on = [0, 0.3, 0.6, 1].map((t) => project(map, 0.5 + t * (u - 0.5), 0.5 + t * (v - 0.5)));
        const [p, q, r, s] = [0, 1, 2, 3].map((i) =>
          Math.hypot((on[i]?.x ?? 0) - (on[0]?.x ?? 0), (on[i]?.y ?? 0) - (on[0]?.y ?? 0)),
        );
        const cross = ([w = 0, x = 0, y = 0, z = 0]: readonly number[]) =>
          ((y - w) * (z - x)) / ((y - x) * (z - w));
        expect(cross([p ?? 0, q ?? 0, r ?? 0, s ?? 0])).toBeCloseTo(cross([0, 0.3, 0.6, 1]), 6);
      }),
    );
  });
  // Source: a pinhole camera made of rotations and a depth (tests/unit/colour/chart-scene.ts).
  it("agrees with a pinhole camera at every place", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const scene = sceneOf(seed);
      const { toPicture, corners: marked } = cameraOf(scene);
      const [across, down] = [scene.columns - scene.gap, scene.rows - scene.gap];
      for (const [u, v] of [
        [0.5, 0.5],
        [0.1, 0.8],
        [0.9, 0.3],
        [-0.1, 1.1],
      ] as const) {
        const [found, wanted] = [project(mapOf(marked), u, v), toPicture(u * across, v * down)];
        expect(Math.hypot(found.x - wanted.x, found.y - wanted.y)).toBeLessThan(1e-6);
      }
    }
  });
  // Worked by hand: x = (2u + 10) ÷ (1 + u), y = (3v + 20) ÷ (1 + u).
  it("is the known one for corners worked by hand", () => {
    const map = mapOf([
      { x: 10, y: 20 },
      { x: 6, y: 10 },
      { x: 6, y: 11.5 },
      { x: 10, y: 23 },
    ]);
    [2, 0, 10, 0, 3, 20, 1, 0, 1].forEach((entry, at) => {
      expect(map[at]).toBeCloseTo(entry, 9);
    });
  });
  it("is none where the corners lie on one line", () => {
    expect(
      homographyOf([
        { x: 0, y: 0 },
        { x: 1, y: 1 },
        { x: 2, y: 2 },
        { x: 3, y: 3 },
      ]),
    ).toBe(null);
  });
});

it("equations are solved: what is put back gives the right-hand side", () => {
  const number = fc.double({ min: -9, max: 9, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.array(number, { minLength: 5, maxLength: 5 }), { minLength: 4, maxLength: 4 }),
      (rows) => {
        // A heavy diagonal, so that there is one answer.
        const equations = rows.map((row, at) => row.map((value, i) => (i === at ? value + 50 : value)));
        const [found] = solve(equations) ?? expect.unreachable("a heavy diagonal has an answer");
        for (const row of equations) {
          const left = (found ?? []).reduce((sum, unknown, i) => sum + unknown * (row[i] ?? 0), 0);
          expect(left).toBeCloseTo(row[4] ?? Number.NaN, 8);
        }
      },
    ),
  );
});

describe("a chart read another way round", () => {
  const scene = { ...sceneOf(5), glare: [], lines: null };
  const photo = photoOf(scene);
  const { rows, columns } = scene;
  const straight = readingOf(photo).cells;
  const [a, b, c, d] = photo.corners;

  const expectSame = (found: CellReading | undefined, wanted: CellReading | undefined) => {
    expect(found?.doubts).toEqual(wanted?.doubts);
    if (found?.lab && wanted?.lab) expect(deltaE2000(found.lab, wanted.lab)).toBeLessThan(1);
  };

  it.each<readonly [string, Corners, boolean, (row: number, column: number) => readonly [number, number]]>([
    ["from its second corner", [b, c, d, a], true, (row, column) => [column, columns - 1 - row]],
    ["upside down", [c, d, a, b], false, (row, column) => [rows - 1 - row, columns - 1 - column]],
    ["from its fourth corner", [d, a, b, c], true, (row, column) => [rows - 1 - column, row]],
    ["down instead of along", [a, d, c, b], true, (row, column) => [column, row]],
    ["mirrored", [b, a, d, c], false, (row, column) => [row, columns - 1 - column]],
  ])("%s has the same colours in other cells", (_, marked, turned, from) => {
    const size = turned ? { rows: columns, columns: rows } : { rows, columns };
    const { cells } = readingOf({ ...photo, ...size, corners: marked });
    expect(cells).toHaveLength(straight.length);
    for (const cell of cells) {
      const [row, column] = from(cell.row, cell.column);
      expectSame(cell, straight[row * columns + column]);
    }
  });

  const enlarged = ({ width, height, data }: Picture, by: number): Picture => {
    const large = new Uint8ClampedArray(4 * width * height * by * by);
    const pixels = new Uint32Array(large.buffer);
    const from = new Uint32Array(data.buffer);
    for (let at = 0; at < pixels.length; at++) {
      const [x, y] = [at % (width * by), Math.floor(at / (width * by))];
      pixels[at] = from[Math.floor(y / by) * width + Math.floor(x / by)] ?? 0;
    }
    return { width: width * by, height: height * by, data: large };
  };
  const scaled = (by: number) =>
    photo.corners.map(({ x, y }) => ({ x: x * by, y: y * by })) as unknown as Corners; // four in, four out

  it.each([2, 5])("%i times as large has the same colours", (by) => {
    const { cells } = readingOf({ ...photo, picture: enlarged(photo.picture, by), corners: scaled(by) });
    cells.forEach((cell, at) => {
      expectSame(cell, straight[at]);
    });
  });

  it.each([0.25, 0.5])("in %f of the light has the same colours", (less) => {
    const dim = { ...scene, light: { ...scene.light, exposure: scene.light.exposure * less } };
    const { cells } = readingOf({ ...photo, picture: photograph(dim) });
    cells.forEach((cell, at) => {
      const lit = straight[at];
      if (cell.lab && lit?.lab) expect(deltaE2000(cell.lab, lit.lab)).toBeLessThan(3);
    });
    expect(cells.filter(({ lab }) => lab).length).toBeGreaterThan(0.9 * cells.length);
  });
});
