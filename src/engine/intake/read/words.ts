import { foldText, gtin14, isGtin, type StashItem } from "../../supply/index.ts";
import { type Cell, cellText } from "../table.ts";
import { type IntakeWords, wordsIn } from "../words/index.ts";
import { doubtful, type Said, sure, unread } from "./said.ts";

type State = NonNullable<StashItem["state"]>;

const listed = (words: string): readonly string[] => words.split(",").map(foldText);

const states: ReadonlyMap<string, State> = new Map(
  Object.values(wordsIn).flatMap(({ states: known }) =>
    (["ok", "low", "empty", "dried"] as const).flatMap((state) =>
      listed(known[state]).map((word) => [word, state] as const),
    ),
  ),
);

/** How much of it is left, in words of any language. */
export function readState(cell: Cell, words: IntakeWords): Said<State> {
  const text = cellText(cell);
  const state = states.get(foldText(text));
  return state ? sure(state) : unread(words.unread(text));
}

/** A GTIN; one whose check digit does not fit is kept, since its label may be read again. */
export function readGtin(cell: Cell, words: IntakeWords): Said<string> {
  const text = cellText(cell);
  const digits = text.replace(/[\s-]/g, "");
  if (isGtin(digits)) return sure(digits);
  return gtin14(digits) ? doubtful(digits, words.checkDigit) : unread(words.unread(text));
}

/** Tags with commas or semicolons between; a leading # is no part of them. */
export const readTags = (cell: Cell): readonly string[] =>
  cellText(cell)
    .split(/[,;]/)
    .map((tag) => tag.trim().replace(/^#+/, "").trim())
    .filter((tag) => tag !== "");

const others: ReadonlySet<string> = new Set(
  Object.values(wordsIn).flatMap(({ otherKinds }) => listed(otherKinds)),
);
const totals: ReadonlySet<string> = new Set(Object.values(wordsIn).flatMap((words) => listed(words.totals)));

/** Whether a kind is said to be none of ours. */
export const isOtherKind = (text: string): boolean => others.has(foldText(text));

/** Whether a cell says that its row sums up the list. */
export const isTotal = (text: string): boolean => totals.has(foldText(text.replace(/[:=]\s*$/, "")));
