import type { Greys } from "../../../src/workers/bar-code/runs.ts";

/*
 * Bar codes drawn after the patterns of GS1 General Specifications, section 5.2.1 (ISO/IEC 15420, tables 1 to 3): a 1 is a
 * dark module. The reader knows them as widths, so that neither table is made from the other.
 */
const setA = [
  ["0001101", "0011001", "0010011", "0111101", "0100011"],
  ["0110001", "0101111", "0111011", "0110111", "0001011"],
].flat();
const setB = [
  ["0100111", "0110011", "0011011", "0100001", "0011101"],
  ["0111001", "0000101", "0010001", "0001001", "0010111"],
].flat();
const setC = [
  ["1110010", "1100110", "1101100", "1000010", "1011100"],
  ["1001110", "1010000", "1000100", "1001000", "1110100"],
].flat();
const leftSets = [
  ["AAAAAA", "AABABB", "AABBAB", "AABBBA", "ABAABB"],
  ["ABBAAB", "ABBBAA", "ABABAB", "ABABBA", "ABBABA"],
].flat();

const spelt = (digits: string, sets: string): string =>
  [...digits]
    .map((digit, place) => ({ A: setA, B: setB, C: setC })[sets[place] ?? "C"]?.[Number(digit)])
    .join("");

/** The modules of an EAN-8 or EAN-13, guards included; of 12 digits, the UPC-A that is an EAN-13 from nought. */
export function modulesOf(code: string): string {
  if (code.length === 8)
    return `101${spelt(code.slice(0, 4), "AAAA")}01010${spelt(code.slice(4), "CCCC")}101`;
  const full = code.padStart(13, "0");
  const left = spelt(full.slice(1, 7), leftSets[Number(full[0])] ?? "");
  return `101${left}01010${spelt(full.slice(7), "CCCCCC")}101`;
}

/** How a picture of a code is taken. Lengths in pixels. */
export type Taken = Readonly<{
  width: number;
  height: number;
  module: number;
  degrees?: number;
  /** The far side is this much smaller, 0 to 1. */
  tilt?: number;
  /** The far side has this much less light, 0 to 1. */
  shadow?: number;
  /** How far ink has spread into the light, in modules. */
  spread?: number;
  /** Standard deviation of the blur. */
  blur?: number;
  /** Grey levels of noise, −n to n. */
  noise?: number;
}>;

const [ink, paper, table] = [0.1, 0.92, 0.35];

/** How light the label is at a place of its own, in modules from its middle; beyond the label lies the table. */
function lightAt(modules: string, across: number, along: number, spread: number): number {
  const half = modules.length / 2;
  if (Math.abs(across) > half + 12 || Math.abs(along) > 36) return table;
  if (Math.abs(along) > 30) return paper;
  const isDark = (at: number) => modules[Math.floor(at + half)] === "1";
  return isDark(across) || isDark(across - spread) || isDark(across + spread) ? ink : paper;
}

/** Noise that is the same at every run. */
function dice(): () => number {
  let state = 7;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Light spread over its neighbours, `step` apart, as by a lens. */
function blurred(light: Float64Array, step: number, blur: number): Float64Array {
  const reach = Math.ceil(3 * blur);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, at) =>
    Math.exp(-((at - reach) ** 2) / (2 * blur ** 2)),
  );
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const soft = new Float64Array(light.length);
  for (let at = 0; at < light.length; at += 1)
    for (let place = 0; place < weights.length; place += 1)
      soft[at] =
        (soft[at] ?? 0) + ((weights[place] ?? 0) / all) * (light[at + (place - reach) * step] ?? table);
  return soft;
}

/** Looks a pixel, each way: edges fall between pixels. */
const looks = 3;

/** A picture of a bar code's label on a table. */
export function drawnCode(code: string, taken: Taken): Greys {
  const { width, height, module, degrees = 0, tilt = 0, shadow = 0, spread = 0, blur = 0, noise = 0 } = taken;
  const modules = modulesOf(code);
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const light = new Float64Array(width * height);
  for (let at = 0; at < light.length * looks * looks; at += 1) {
    const pixel = Math.floor(at / looks ** 2);
    const [column, row] = [pixel % width, Math.floor(pixel / width)];
    const x = column + ((at % looks) + 0.5) / looks - width / 2;
    const y = row + ((Math.floor(at / looks) % looks) + 0.5) / looks - height / 2;
    const size = module * (1 - (tilt * (x + width / 2)) / width);
    const look = lightAt(modules, (x * cos + y * sin) / size, (y * cos - x * sin) / size, spread / 2);
    light[pixel] = (light[pixel] ?? 0) + (look / looks ** 2) * (1 - (shadow * column) / width);
  }
  const soft = blur > 0 ? blurred(blurred(light, 1, blur), width, blur) : light;
  const roll = dice();
  const data = Uint8ClampedArray.from(soft, (value) => 255 * value + noise * (2 * roll() - 1));
  return { data, width, height };
}
