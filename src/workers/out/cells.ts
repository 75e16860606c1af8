import type { OwnList, WrittenCell } from "../../engine/intake/index.ts";

/** A cell as text. */
export function cellText(cell: WrittenCell): string {
  if (cell === null) return "";
  if (typeof cell === "string") return cell;
  return "date" in cell ? cell.date : cell.number;
}

/** With how many decimals amounts are shown in a list, each once, in order. */
export const placesIn = ({ rows }: OwnList): readonly number[] =>
  [
    ...new Set(
      rows.flatMap((row) =>
        row.flatMap((cell) =>
          cell !== null && typeof cell === "object" && "number" in cell ? (cell.places ?? []) : [],
        ),
      ),
    ),
  ].toSorted((a, b) => a - b);

export const textRows = ({ heads, rows }: OwnList): readonly (readonly string[])[] => [
  heads,
  ...rows.map((row) => row.map(cellText)),
];

/** A number's format with a fixed count of decimals: "0.00". */
export const fixed = (places: number): string => (places === 0 ? "0" : `0.${"0".repeat(places)}`);
