import type { Supply } from "../../../engine/supply/index.ts";
import type { Workbook } from "../../../engine/workbook/index.ts";

const suppliesIn = ({ stash, kits }: Workbook): readonly Supply[] => [
  ...(stash ?? []).map(({ supply }) => supply),
  ...(kits ?? []).flatMap(({ lines }) => (lines ?? []).map(({ supply }) => supply)),
];

const eachOnce = (names: readonly (string | null | undefined)[]): readonly string[] =>
  [...new Set(names.filter((name): name is string => Boolean(name)))].toSorted((a, b) => a.localeCompare(b));

/** How many others have to agree before what they are is offered. */
const enough = 2;

/** The value that most of these have of a trait, and how many; null where too few have any, or none is commonest. */
function commonest(supplies: readonly Supply[], trait: string) {
  const values = new Map<string, { value: unknown; count: number }>();
  for (const { traits } of supplies) {
    const value: unknown =
      traits && Object.hasOwn(traits, trait) ? traits[trait as keyof typeof traits] : null;
    if (value === null || value === undefined) continue;
    const key = JSON.stringify(value);
    values.set(key, { value, count: (values.get(key)?.count ?? 0) + 1 });
  }
  const [first, second] = [...values.values()].toSorted((a, b) => b.count - a.count);
  return first && first.count >= enough && first.count > (second?.count ?? 0) ? first : null;
}

/** What is likely written of a supply, learned from the stash and the kits. */
export function offersIn(book: Workbook) {
  const supplies = suppliesIn(book);
  return {
    makers: eachOnce(supplies.map(({ maker }) => maker)),
    /** The lines of a maker; of all where none is said. */
    linesOf: (maker: string) =>
      eachOnce(supplies.filter((one) => maker === "" || one.maker === maker).map(({ line }) => line)),
    /** What the others of a supply's maker, line and family mostly are in a trait. */
    likely: (supply: Supply, trait: string) => {
      const { family, maker, line } = supply;
      if (!maker || !line) return null;
      const others = supplies.filter(
        (one) => one !== supply && one.family === family && one.maker === maker && one.line === line,
      );
      return commonest(others, trait);
    },
  } as const;
}

export type Offers = ReturnType<typeof offersIn>;
