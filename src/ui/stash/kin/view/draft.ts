import { foldText, type Kinship, type Supply } from "../../../../engine/supply/index.ts";
import { kinWords as words } from "../../../words/kin.ts";
import { readPairs } from "./pairs.ts";

export type Side = Readonly<{ maker: string; line: string; code: string }>;
export type Pairing = keyof typeof words.pairings;

/** A link as it is being written. */
export type Draft = Readonly<{
  kind: keyof typeof words.kinds;
  a: Side;
  b: Side;
  /** How two whole lines are paired; asked where neither side has a number. */
  pairing: Pairing;
  pairs: string;
  sure: keyof typeof words.sures | "";
  source: string;
  date: string | null;
}>;

const noSide: Side = { maker: "", line: "", code: "" };

export const sideOf = ({ maker, line, code }: Supply): Side => ({
  maker: maker ?? "",
  line: line ?? "",
  code: code ?? "",
});

/** @param from what one side is, when it is asked for from a thing of the stash */
export const emptyDraft = (from: Supply | null): Draft => ({
  kind: "twin",
  a: from ? sideOf(from) : noSide,
  b: noSide,
  pairing: "code",
  pairs: "",
  sure: "",
  source: "",
  date: null,
});

export const isWholeLines = ({ a, b }: Draft): boolean => a.code.trim() === "" && b.code.trim() === "";

/** What keeps a draft from being a link, by the field that it is about. */
export type DraftFaults = Readonly<Partial<Record<"a" | "b" | "pairs", string>>>;

const isNamed = ({ maker, line }: Side): boolean => maker.trim() !== "" || line.trim() !== "";
const sideKey = ({ maker, line, code }: Side): string => JSON.stringify([maker, line, code].map(foldText));

const isByPairs = (draft: Draft): boolean => isWholeLines(draft) && draft.pairing === "pairs";

export function faultsOf(draft: Draft): DraftFaults {
  const { a, b } = draft;
  if (!isNamed(a) || !isNamed(b))
    return {
      ...(isNamed(a) ? {} : { a: words.sideMissing }),
      ...(isNamed(b) ? {} : { b: words.sideMissing }),
    };
  if (isByPairs(draft)) {
    const { pairs, odd } = readPairs(draft.pairs);
    if (odd.length > 0) return { pairs: words.odd(odd.slice(0, 3)) };
    return pairs.length === 0 ? { pairs: words.pairsMissing } : {};
  }
  return sideKey(a) === sideKey(b) ? { b: words.itself } : {};
}

/** How many links a draft comes to. */
export const linksIn = (draft: Draft): number =>
  isByPairs(draft) ? Math.max(1, readPairs(draft.pairs).pairs.length) : 1;

const written = (side: Side) =>
  Object.fromEntries(
    Object.entries(side)
      .map(([name, text]) => [name, text.trim()])
      .filter(([, text]) => text !== ""),
  );

/**
 * The links that a draft without faults comes to: one, or one for each pair of numbers.
 * @param makeId gives a fresh id, told the links made so far
 */
export function kinshipsOf(draft: Draft, makeId: (made: readonly Kinship[]) => string): readonly Kinship[] {
  const { kind, a, b, pairing, sure, source, date } = draft;
  const told = {
    ...(sure === "" ? {} : { sure }),
    ...(source.trim() === "" ? {} : { source: source.trim() }),
    ...(date === null ? {} : { date }),
  };
  if (!isByPairs(draft)) {
    const by = isWholeLines(draft) && pairing !== "pairs" ? { by: pairing } : {};
    return [{ id: makeId([]), kind, a: written(a), b: written(b), ...by, ...told }];
  }
  const made: Kinship[] = [];
  for (const [one, other] of readPairs(draft.pairs).pairs)
    made.push({
      id: makeId(made),
      kind,
      a: written({ ...a, code: one }),
      b: written({ ...b, code: other }),
      ...told,
    });
  return made;
}
