import { type ReactNode, useRef } from "react";
import { classes } from "./classes.ts";
import { Opening } from "./opening.tsx";
import { RolledRows } from "./rolled-rows.tsx";
import styles from "./table.module.css";

export type Column<Row> = Readonly<{
  key: string;
  head: ReactNode;
  /** The head is only read out: for words that belong to the amounts before them. */
  headHidden?: boolean;
  cell: (row: Row) => ReactNode;
  /** `end` for amounts and counts, so that their decimal marks stand under each other. */
  align?: "start" | "end";
  /** The cell that names the row; on a phone it becomes the row's title. */
  names?: boolean;
  /** What becomes of the column where the table is stacked: label and value, value alone, or nothing. */
  stacked?: "pair" | "alone" | "hide";
  /** Share of the width, such as "30%". */
  width?: string;
  /** Words after an amount: keep close to the column before. */
  follows?: boolean;
}>;

type Props<Row> = Readonly<{
  caption: string;
  captionHidden?: boolean;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  keyOf: (row: Row) => string;
  /** The row looked at, on tint. */
  current?: string | null;
  /** What is opened under a row, edge to edge; null where nothing is. */
  opened?: (row: Row) => ReactNode;
  /** The total line, by column key. */
  total?: Readonly<Record<string, ReactNode>>;
  /** There may be thousands of rows: only those near the window are drawn, and all of them on paper. */
  rolled?: boolean;
}>;

// Stacked rows lose their table roles in some browsers when `display` changes: said once more, they stay.
const roles = {
  table: { role: "table" },
  group: { role: "rowgroup" },
  row: { role: "row" },
  cell: { role: "cell" },
  columnHead: { role: "columnheader" },
  rowHead: { role: "rowheader" },
} as const;

/** A table; where it has too little room each row becomes a stack of label and value. */
export function Table<Row>(props: Props<Row>) {
  const { caption, captionHidden = true, columns, rows, keyOf, total, rolled = false } = props;
  const list = useRef<HTMLTableElement>(null);
  const bodyRow = (row: Row, at?: number) => <BodyRow key={keyOf(row)} {...props} row={row} at={at} />;
  return (
    <div className={styles.room}>
      <table
        ref={list}
        className={styles.table}
        {...roles.table}
        aria-rowcount={rolled ? rows.length + 1 : undefined}
      >
        <caption className={captionHidden ? "visually-hidden" : styles.caption}>{caption}</caption>
        <thead {...roles.group} className={styles.head}>
          <tr {...roles.row}>
            {columns.map((column) => (
              <th
                key={column.key}
                scope="col"
                {...roles.columnHead}
                className={classes(styles.headCell, column.align === "end" && styles.end)}
                style={column.width === undefined ? undefined : { width: column.width }}
              >
                {column.headHidden ? <span className="visually-hidden">{column.head}</span> : column.head}
              </th>
            ))}
          </tr>
        </thead>
        {rolled ? (
          <RolledRows
            list={list}
            rows={rows}
            columns={columns.length}
            keep={rows.findIndex((row) => keyOf(row) === props.current)}
            bodyClass={styles.body ?? ""}
            row={bodyRow}
          />
        ) : (
          <tbody {...roles.group} className={styles.body}>
            {rows.map((row) => bodyRow(row))}
          </tbody>
        )}
        {total && (
          <tfoot {...roles.group} className={styles.foot}>
            <tr {...roles.row} className={styles.total}>
              {columns.map((column) => (
                <Cell key={column.key} column={column}>
                  {total[column.key]}
                </Cell>
              ))}
            </tr>
          </tfoot>
        )}
      </table>
    </div>
  );
}

type RowProps<Row> = Props<Row> &
  Readonly<{ row: Row /** Its place among all, from 0. */; at?: number | undefined }>;

function BodyRow<Row>({ row, at, columns, keyOf, current, opened }: RowProps<Row>) {
  const below = opened?.(row);
  return (
    <>
      <tr
        {...roles.row}
        aria-rowindex={at === undefined ? undefined : at + 2}
        className={classes(styles.row, keyOf(row) === current && styles.current)}
      >
        {columns.map((column) => (
          <Cell key={column.key} column={column}>
            {column.cell(row)}
          </Cell>
        ))}
      </tr>
      {below && (
        <tr {...roles.row} className={styles.openedRow}>
          <td {...roles.cell} className={styles.opened} colSpan={columns.length}>
            <Opening>{below}</Opening>
          </td>
        </tr>
      )}
    </>
  );
}

type CellProps<Row> = Readonly<{ column: Column<Row>; children: ReactNode }>;

function Cell<Row>({ column, children }: CellProps<Row>) {
  const className = cellClass(column);
  if (column.names) {
    return (
      <th scope="row" {...roles.rowHead} className={className}>
        {children}
      </th>
    );
  }
  const empty = children === undefined || children === null || children === "";
  return (
    <td {...roles.cell} className={classes(className, empty && styles.empty)}>
      {column.stacked !== "alone" && (
        <span className={styles.label} aria-hidden="true">
          {column.head}
        </span>
      )}
      <span className={styles.value}>{children}</span>
    </td>
  );
}

const cellClass = (column: Column<never>): string =>
  classes(
    styles.cell,
    column.align === "end" && styles.end,
    column.follows && styles.follows,
    column.names && styles.names,
    column.stacked === "hide" && styles.hide,
    column.stacked === "alone" && styles.alone,
  );
