/**
 * The bar codes EAN-13, EAN-8 and UPC-A, as the widths of their bars and spaces, in modules.
 * @see ISO/IEC 15420, and GS1 General Specifications, section 5.2
 */

/** Number set A: a space, a bar, a space and a bar, seven modules in all. Set C has them as bar, space, bar, space. */
const setA: readonly (readonly [number, number, number, number])[] = [
  [3, 2, 1, 1],
  [2, 2, 2, 1],
  [2, 1, 2, 2],
  [1, 4, 1, 1],
  [1, 1, 3, 2],
  [1, 2, 3, 1],
  [1, 1, 1, 4],
  [1, 3, 1, 2],
  [1, 2, 1, 3],
  [3, 1, 1, 2],
];

/** What a character is, and where its edges lie. `even`: of number set B, which is set A read from behind. */
type Pattern = Readonly<{ digit: number; even: boolean; first: number; second: number; odd: number }>;

const patternOf = (digit: number, even: boolean, widths: readonly number[]): Pattern => {
  const [a = 0, b = 0, c = 0, d = 0] = widths;
  return { digit, even, first: a + b, second: b + c, odd: b + d };
};

const patterns: readonly Pattern[] = setA.flatMap((widths, digit) => [
  patternOf(digit, false, widths),
  patternOf(digit, true, widths.toReversed()),
]);

/** Which of the six left characters of an EAN-13 are of set B, by its first digit, which has no character of its own. */
const firstDigits = [
  "AAAAAA",
  "AABABB",
  "AABBAB",
  "AABBBA",
  "ABAABB",
  "ABBAAB",
  "ABBBAA",
  "ABABAB",
  "ABABBA",
  "ABBABA",
];

/** How far, in modules squared, a character may be from the pattern that it is nearest to. */
const farthest = 0.9;

/**
 * Reads four runs as a character by the distances between edges of the same direction, which ink that has spread does
 * not change; the runs' own widths only part the digits that these leave open (1 and 7, 2 and 8).
 * @see ISO/IEC 15420, reference decode algorithm
 */
function character(runs: readonly number[]): Pattern | null {
  const [a = 0, b = 0, c = 0, d = 0] = runs;
  const module = (a + b + c + d) / 7;
  const [first, second, odd] = [(a + b) / module, (b + c) / module, (b + d) / module];
  const distance = (of: Pattern) =>
    (of.first - first) ** 2 + (of.second - second) ** 2 + 0.2 * (of.odd - odd) ** 2;
  const [nearest] = patterns.map((of) => ({ of, far: distance(of) })).toSorted((x, y) => x.far - y.far);
  return nearest && nearest.far < farthest ? nearest.of : null;
}

/** `count` characters of four runs each; null where one is none. */
function characters(runs: readonly number[], count: number): readonly Pattern[] | null {
  const read: Pattern[] = [];
  for (let at = 0; at < count; at += 1) {
    const one = character(runs.slice(4 * at, 4 * at + 4));
    if (!one) return null;
    read.push(one);
  }
  return read;
}

const sum = (runs: readonly number[]): number => runs.reduce((all, run) => all + run, 0);

/** Whether guard bars are about one module each. */
const areGuards = (runs: readonly number[], module: number): boolean =>
  runs.every((run) => run > 0.3 * module && run < 2.2 * module);

/** A kind of symbol: how many characters on either side of its middle. */
type Kind = Readonly<{ perSide: number; digitsOf: (left: readonly Pattern[]) => string | null }>;

const evenDigits = (left: readonly Pattern[]): string => left.map(({ even }) => (even ? "B" : "A")).join("");
const figures = (read: readonly Pattern[]): string => read.map(({ digit }) => digit).join("");

const kinds: readonly Kind[] = [
  {
    perSide: 6,
    digitsOf: (left) => {
      const first = firstDigits.indexOf(evenDigits(left));
      return first === -1 ? null : first + figures(left);
    },
  },
  { perSide: 4, digitsOf: (left) => (left.some(({ even }) => even) ? null : figures(left)) },
];

/** A symbol of one kind in runs that begin with its first bar; its check digit is not looked at. */
function symbolAt(runs: readonly number[], at: number, { perSide, digitsOf }: Kind): string | null {
  const side = 4 * perSide;
  const all = runs.slice(at, at + 3 + side + 5 + side + 3);
  if (all.length < 11 + 2 * side) return null;
  const module = sum(all) / (11 + 14 * perSide);
  const [before = 0, after = 0] = [runs[at - 1], runs[at + all.length]];
  if (before < 3 * module || after < 3 * module) return null; // the light margin; the standard has 7 to 11
  const [middle, right] = [3 + side, 8 + side];
  const guards = [...all.slice(0, 3), ...all.slice(middle, right), ...all.slice(-3)];
  if (!areGuards(guards, module)) return null;
  const left = characters(all.slice(3, middle), perSide);
  const rest = left && characters(all.slice(right, -3), perSide);
  if (!left || !rest || rest.some(({ even }) => even)) return null;
  const digits = digitsOf(left);
  return digits === null ? null : digits + figures(rest);
}

/**
 * Every number that these runs could be, read from one end.
 * @param runs widths of light and dark by turns, light first
 */
export function symbolsIn(runs: readonly number[]): readonly string[] {
  const found: string[] = [];
  for (let at = 1; at < runs.length; at += 2)
    for (const kind of kinds) {
      const digits = symbolAt(runs, at, kind);
      if (digits !== null) found.push(digits);
    }
  return found;
}
