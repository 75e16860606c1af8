import type { ReactNode, RefObject } from "react";
import { usePrinting } from "./use-printing.ts";
import { useRolled } from "./use-rolled.ts";

type Props<Row> = Readonly<{
  list: RefObject<HTMLElement | null>;
  rows: readonly Row[];
  columns: number;
  /** The index of a row that is drawn wherever it lies; -1 for none. */
  keep: number;
  bodyClass: string;
  row: (row: Row, at: number) => ReactNode;
}>;

/** Rows to a piece: so few that one more costs nothing while scrolling. */
const inPiece = 10;

// Said once more, since a stacked body loses the role it has.
const group = { role: "rowgroup" } as const;

const rowAboutPx = 58;

/** The rows of a long table: a body for each piece that is drawn, and a gap for those that are not. */
export function RolledRows<Row>({ list, rows, columns, keep, bodyClass, row }: Props<Row>) {
  const { stretches, onFocus, onBlur } = useRolled({
    list,
    count: Math.ceil(rows.length / inPiece),
    aboutPx: rowAboutPx * inPiece,
    keep: keep === -1 ? [] : [Math.floor(keep / inPiece)],
    all: usePrinting(),
  });
  return stretches.map((stretch) => {
    if ("gap" in stretch) {
      return (
        <tbody key={`gap ${stretch.from}`} aria-hidden="true">
          <tr>
            <td colSpan={columns} style={{ height: stretch.gap, padding: 0 }} />
          </tr>
        </tbody>
      );
    }
    const from = stretch.piece * inPiece;
    return (
      <tbody
        key={stretch.piece}
        {...group}
        data-piece={stretch.piece}
        className={bodyClass}
        onFocus={onFocus}
        onBlur={onBlur}
      >
        {rows.slice(from, from + inPiece).map((one, index) => row(one, from + index))}
      </tbody>
    );
  });
}
