import { deltaE2000, type HueName, hueOf, type Lab, labFromHex, lchOf } from "../../colour/index.ts";
import { foldText } from "../fold.ts";
import { type Atom, atomsIn } from "./colour-atoms.ts";
import { hexOfWord } from "./colour-words.ts";

/** What a phrase such as "pale grey-green" says of a colour, as far as its words are known. */
export type ColourPhrase = Readonly<{
  /** The words that speak of colour, folded. */
  words: readonly string[];
  /** The colour that the phrase brings to mind. */
  lab: Lab;
  /** Whether one of its words names one colour ("lichen"), and not a whole region of them ("green"). */
  isOne: boolean;
  /** Whether a colour can be called so. */
  fits: (lab: Lab) => boolean;
}>;

/** ΔE00 up to which a colour can go by the name of another: people mean much by one word. The limit is ours. */
const namedUpTo = 12;

/** L* that counts as light, dark and very dark; C*ab of what is vivid, muted or greyish. The limits are ours. */
const limits = {
  light: 66,
  dark: 44,
  veryDark: 30,
  vivid: 50,
  muted: 42,
  greyish: 32,
  grey: 9,
  white: 92,
  black: 16,
};

type Said = Readonly<{ atoms: readonly Atom[]; point: Lab | null; words: readonly string[] }>;

const pairOf = (words: readonly string[], at: number): string | null => {
  const next = words[at + 1];
  return next === undefined ? null : hexOfWord(`${words[at]} ${next}`);
};

/** A word that names one colour, alone or with the next: "dusty rose". */
function pointAt(words: readonly string[], at: number): Readonly<{ hex: string; length: 1 | 2 }> | null {
  const [word = "", next = ""] = words.slice(at, at + 2);
  const pair = pairOf(words, at);
  if (pair !== null && !(atomsIn(word) && atomsIn(next))) return { hex: pair, length: 2 };
  const hex = atomsIn(word) ? null : hexOfWord(word);
  return hex === null ? null : { hex, length: 1 };
}

function sayingOf(words: readonly string[]): Said {
  const atoms: Atom[] = [];
  const known: string[] = [];
  let point: Lab | null = null;
  for (let at = 0; at < words.length; at++) {
    const one = pointAt(words, at);
    if (one) {
      point = labFromHex(one.hex);
      known.push(...words.slice(at, at + one.length));
      at += one.length - 1;
      continue;
    }
    const some = atomsIn(words[at] ?? "");
    if (some) {
      atoms.push(...some);
      known.push(words[at] ?? "");
    }
  }
  return { atoms, point, words: known };
}

/** The wish as ranges, each null where nothing is said of it. */
type Region = Readonly<{ hues: ReadonlySet<HueName> | null; tests: readonly ((look: Look) => boolean)[] }>;
type Look = Readonly<{ l: number; c: number; h: number; hue: HueName; grey: boolean }>;

const has = (atoms: readonly Atom[], kind: Atom["kind"]): boolean => atoms.some((atom) => atom.kind === kind);

function testsOf(atoms: readonly Atom[], hasHue: boolean): Region["tests"] {
  const tests: ((look: Look) => boolean)[] = [];
  if (has(atoms, "light")) tests.push(({ l }) => l >= limits.light);
  if (has(atoms, "dark")) {
    const most = has(atoms, "very") ? limits.veryDark : limits.dark;
    tests.push(({ l }) => l <= most);
  }
  if (has(atoms, "vivid")) tests.push(({ c }) => c >= limits.vivid);
  if (has(atoms, "muted")) tests.push(({ c, grey }) => c <= limits.muted && !grey);
  if (has(atoms, "greyish") || (has(atoms, "grey") && hasHue)) tests.push(({ c }) => c <= limits.greyish);
  if (has(atoms, "grey") && !hasHue) tests.push(({ c, grey }) => grey || c <= limits.grey);
  if (has(atoms, "white")) tests.push(({ l, c }) => l >= limits.white && c <= limits.grey);
  if (has(atoms, "black")) tests.push(({ l }) => l <= limits.black);
  if (has(atoms, "warm")) tests.push(({ h }) => h < 110 || h > 330);
  if (has(atoms, "cool")) tests.push(({ h }) => h >= 150 && h <= 310);
  return tests;
}

function regionOf(atoms: readonly Atom[]): Region {
  const hues = atoms.filter((atom) => atom.kind === "hue");
  const last = hues.at(-1); // "greenish brown" is a brown
  return { hues: last ? new Set(last.hues) : null, tests: testsOf(atoms, hues.length > 0) };
}

/** A colour's own look is asked for at every key of a search, and never changes. */
const looks = new WeakMap<Lab, Look>();

function lookOf(lab: Lab): Look {
  const known = looks.get(lab);
  if (known) return known;
  const { name, grey } = hueOf(lab);
  const look = { ...lchOf(lab), hue: name, grey };
  looks.set(lab, look);
  return look;
}

function isIn({ hues, tests }: Region, lab: Lab): boolean {
  const look = lookOf(lab);
  if (hues && (!hues.has(look.hue) || look.c < 2)) return false; // under 2 no hue can be seen
  return tests.every((test) => test(look));
}

/**
 * Whether a colour can go by the name of another. What is too far in L*, a* or b* alone is told at once: SL is at most
 * 1.75, and SC at most 1 + 0.03375 (C1 + C2), with 0.1339 of the rest left at least.
 */
function isNamed(wanted: Lab, lab: Lab): boolean {
  if (Math.abs(wanted.l - lab.l) > 1.75 * namedUpTo) return false;
  const [da, db] = [wanted.a - lab.a, wanted.b - lab.b];
  // Not `hypot`, which takes ten times as long: this is asked of every colour there is, at every key.
  const chromas = Math.sqrt(wanted.a ** 2 + wanted.b ** 2) + Math.sqrt(lab.a ** 2 + lab.b ** 2);
  const most = namedUpTo * (1 + 0.03375 * chromas);
  return 0.1339 * (da * da + db * db) <= most * most && deltaE2000(wanted, lab) <= namedUpTo;
}

const inLch = (l: number, c: number, h: number): Lab => ({
  white: "D65",
  l,
  a: c * Math.cos((h * Math.PI) / 180),
  b: c * Math.sin((h * Math.PI) / 180),
});

/** A colour as light, dark, strong or weak as the words want it; what they do not speak of stays. */
function toned(lab: Lab, atoms: readonly Atom[], isPoint: boolean): Lab {
  const { l, c, h } = lchOf(lab);
  const light = has(atoms, "light") ? (isPoint ? Math.min(95, l + 18) : 84) : l;
  const dark = has(atoms, "dark") ? (isPoint ? Math.max(5, l - 18) : 30) : light;
  const most = has(atoms, "grey") || has(atoms, "greyish") ? 14 : has(atoms, "muted") ? 24 : c;
  return inLch(dark, Math.min(c, most), h);
}

/** What a region's words bring to mind first. */
function middleOf(atoms: readonly Atom[]): Lab {
  const hue = atoms.findLast((atom) => atom.kind === "hue");
  if (hue) return labFromHex(hue.hex);
  if (has(atoms, "white")) return inLch(98, 0, 0);
  if (has(atoms, "black")) return inLch(8, 0, 0);
  const [warm, cool] = [has(atoms, "warm"), has(atoms, "cool")];
  return inLch(60, warm || cool ? 6 : 0, cool ? 250 : 70);
}

/**
 * The colour of a name that is one colour with words of tone before it, every word of it understood: "deep plum",
 * "pale grey-green". Null for anything else, such as two colours side by side.
 */
export function tonedColour(name: string): Lab | null {
  const words = name
    .split(/\s+/)
    .map(foldText)
    .filter((word) => word !== "");
  const { atoms, point, words: known } = sayingOf(words);
  const hues = atoms.filter(({ kind }) => kind === "hue").length + (point ? 1 : 0);
  if (words.length < 2 || known.length !== words.length || hues !== 1) return null;
  return toned(point ?? middleOf(atoms), atoms, point !== null);
}

/** Words such as "light" speak of colour only beside one that names it: alone they may be part of any name. */
const namesColour = ({ atoms, point }: Said): boolean =>
  point !== null || atoms.some(({ kind }) => ["hue", "grey", "white", "black"].includes(kind));

/**
 * Reads a phrase about colour in English or Swedish, whole or mixed with other words: the words that are none of
 * colour are left alone. Of a name that is not known ("lichen green") the part that is known counts.
 * @returns null where no word names a colour
 */
export function readColourPhrase(text: string): ColourPhrase | null {
  const words = text
    .split(/\s+/)
    .map(foldText)
    .filter((word) => word !== "");
  const said = sayingOf(words);
  if (!namesColour(said)) return null;
  const { atoms, point } = said;
  const lab = toned(point ?? middleOf(atoms), atoms, point !== null);
  const region = regionOf(atoms);
  return {
    words: said.words,
    lab,
    isOne: point !== null,
    fits: point ? (other) => isNamed(lab, other) : (other) => isIn(region, other),
  };
}
