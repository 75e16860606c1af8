/** Fractions that have a sign of their own. */
const signs: ReadonlyMap<string, number> = new Map([
  ["½", 1 / 2],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
]);

const sign = `[${[...signs.keys()].join("")}]`;

/**
 * An amount as it is written: 12, 0.3, 0,3, .3, 1/2, 1 1/2, 1½. Not the tail of another ("0.3/0.5" is two), and
 * with no groups of three, since "1,500" could be one and a half.
 */
export const amount = `(?<!\\p{N}[.,/–-])(?:(?:\\d+[\\s-]+)?\\d{1,2}/\\d{1,2}|\\d*${sign}|\\d+(?:[.,]\\d+)?|(?<=^|[\\s(])\\.\\d+)`;

const fraction = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/;

/** The number that an amount stands for; not finite for 1/0. */
export function toNumber(text: string | undefined): number {
  const written = (text ?? "").trim();
  const [, whole = "0", over, under] = fraction.exec(written) ?? [];
  if (over) return Number(whole) + Number(over) / Number(under);
  const last = signs.get(written.slice(-1));
  return last === undefined ? Number(written.replace(",", ".")) : Number(written.slice(0, -1) || "0") + last;
}
