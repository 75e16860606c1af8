import { definePDFJSModule, getDocumentProxy, getResolvedPDFJS } from "unpdf";

/** A piece of text on a page; `x` and `y` in points from the lower left corner. */
export type Piece = Readonly<{ text: string; x: number; y: number }>;

/** A line as it was stroked, in points. */
export type Stroke = Readonly<{ widthPt: number; points: readonly (readonly [x: number, y: number])[] }>;

export type Sheet = Readonly<{ pieces: readonly Piece[]; strokes: readonly Stroke[]; images: number }>;

type Matrix = readonly [number, number, number, number, number, number];

const upright: Matrix = [1, 0, 0, 1, 0, 0];

/** ISO 32000-1, 8.3.4: `inner` is applied first. */
const times = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
};

/** The sheets of a PDF. Source: pdf.js, a reader of PDF that is not the one which wrote them, by way of unpdf. */
export async function sheetsOf(pdf: Buffer): Promise<readonly Sheet[]> {
  await definePDFJSModule(() => import("unpdf/pdfjs"));
  const { OPS } = await getResolvedPDFJS();
  const names = new Map(Object.entries(OPS).map(([name, code]) => [code as number, name]));
  const document = await getDocumentProxy(new Uint8Array(pdf), { verbosity: 0 });
  const numbers = Array.from({ length: document.numPages }, (_, index) => index + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const page = await document.getPage(number);
      const [content, list] = [await page.getTextContent(), await page.getOperatorList()];
      const steps = list.fnArray.map((code, i): Step => {
        // What pdf.js hands over is not typed: each operator's arguments are as its evaluator lists them.
        const args = list.argsArray[i] as readonly unknown[];
        const drawn = code === OPS.constructPath ? names.get(Number(args[0])) : undefined;
        return { name: drawn ?? names.get(code) ?? "", args };
      });
      return {
        pieces: content.items.flatMap((item) =>
          "str" in item && item.str.trim()
            ? [{ text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]) }]
            : [],
        ),
        strokes: strokesOf(steps),
        images: steps.filter(({ name }) => /image/i.test(name)).length,
      };
    }),
  );
}

/** An operator; of a path, what is done with it once it is laid. */
type Step = Readonly<{ name: string; args: readonly unknown[] }>;
type State = { matrix: Matrix; width: number };

/** Follows the page's own matrices and line widths, and measures each line where it falls on the paper. */
function strokesOf(steps: readonly Step[]): readonly Stroke[] {
  const found: Stroke[] = [];
  const kept: State[] = [];
  let state: State = { matrix: upright, width: 1 };
  for (const { name, args } of steps) {
    if (name === "save") kept.push({ ...state });
    else if (name === "restore") state = kept.pop() ?? state;
    else if (name === "transform") state.matrix = times(state.matrix, args as unknown as Matrix);
    else if (name === "setLineWidth") state.width = Number(args[0]);
    else if (name === "setGState") state.width = widthIn(args[0]) ?? state.width;
    else if (name === "stroke")
      found.push(strokeOf(state, (args[1] as readonly ArrayLike<number>[])[0] ?? []));
  }
  return found;
}

/** ISO 32000-1, table 58: a graphics state dictionary may set the width of lines. */
const widthIn = (entries: unknown): number | null => {
  const all = new Map(entries as readonly (readonly [string, unknown])[]);
  return all.has("LW") ? Number(all.get("LW")) : null;
};

/** How many numbers follow each of pdf.js's drawing steps: move, line, curve, close. */
const takes = [2, 2, 6, 4, 0];

function strokeOf({ matrix, width }: State, path: ArrayLike<number>): Stroke {
  const [a, b, c, d, e, f] = matrix;
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i < path.length; ) {
    const count = takes[path[i] ?? 0] ?? 0;
    if (count >= 2) {
      const [x, y] = [path[i + count - 1] ?? 0, path[i + count] ?? 0];
      points.push([a * x + c * y + e, b * x + d * y + f]);
    }
    i += 1 + count;
  }
  return { widthPt: width * Math.sqrt(Math.abs(a * d - b * c)), points };
}

/** The lines of text on a sheet, from its head down, each from left to right. */
export function linesOf({ pieces }: Sheet): readonly string[] {
  const lines = new Map<number, Piece[]>();
  for (const piece of pieces) {
    const y = Math.round(piece.y);
    lines.set(y, [...(lines.get(y) ?? []), piece]);
  }
  return [...lines]
    .toSorted(([a], [b]) => b - a)
    .map(([, line]) =>
      line
        .toSorted((a, b) => a.x - b.x)
        .map(({ text }) => text.trim())
        .join(" "),
    );
}
