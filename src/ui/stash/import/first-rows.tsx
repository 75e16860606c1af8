import type { Mapping } from "../../../engine/intake/index.ts";
import { classes } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { importWords as words } from "../../words/import.ts";
import styles from "./first-rows.module.css";
import { fieldOptions, withColumn } from "./view/options.ts";
import { columnName, type RowView } from "./view/rows.ts";

// Stacked rows lose their table roles in some browsers when `display` changes: said once more, they stay.
const roles = {
  table: { role: "table" },
  group: { role: "rowgroup" },
  row: { role: "row" },
  cell: { role: "cell" },
  columnHead: { role: "columnheader" },
  rowHead: { role: "rowheader" },
} as const;

type Props = Readonly<{
  mapping: Mapping;
  heads: readonly string[];
  rows: readonly RowView[];
  onMapping: (mapping: Mapping) => void;
}>;

/**
 * The first rows of a list: what each is understood as, and its cells under heads that say what a column is taken for
 * and can be changed. Where there is little room the heads come first, then row under row with only what is doubtful.
 */
export function FirstRows({ mapping, heads, rows, onMapping }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className={styles.room} aria-label={words.table} tabIndex={0}>
      <table className={styles.table} {...roles.table}>
        <caption className="visually-hidden">{words.table}</caption>
        <thead {...roles.group}>
          <tr {...roles.row} className={styles.heads}>
            <th {...roles.columnHead} scope="col" className={classes(styles.head, styles.title)}>
              {words.understood}
            </th>
            {mapping.columns.map((_, column) => (
              <th
                // biome-ignore lint/suspicious/noArrayIndexKey: columns are told apart by their place alone
                key={column}
                {...roles.columnHead}
                scope="col"
                className={styles.head}
              >
                <ColumnHead
                  column={column}
                  name={columnName(heads, column)}
                  mapping={mapping}
                  onMapping={onMapping}
                />
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...roles.group}>
          {rows.map((row) => (
            <Row key={row.key} row={row} heads={heads} mapping={mapping} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

type HeadProps = Readonly<{
  column: number;
  name: string;
  mapping: Mapping;
  onMapping: Props["onMapping"];
}>;

function ColumnHead({ column, name, mapping, onMapping }: HeadProps) {
  return (
    <label className={styles.columnHead}>
      <span className={styles.columnName}>{name}</span>
      <select
        className={styles.select}
        aria-label={words.columnIs(name)}
        value={mapping.columns[column] ?? ""}
        onChange={(event) => {
          const field = fieldOptions.find(({ value }) => value === event.currentTarget.value)?.value ?? "";
          onMapping(withColumn(mapping, column, field === "" ? null : field));
        }}
      >
        {fieldOptions.map(({ value, label }) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}

type RowProps = Readonly<{ row: RowView; heads: readonly string[]; mapping: Mapping }>;

function Row({ row, heads, mapping }: RowProps) {
  return (
    <tr {...roles.row} className={styles.row}>
      <th {...roles.rowHead} scope="row" className={styles.thing}>
        <Thing row={row} />
      </th>
      {row.cells.map(({ column, text, doubt }) => (
        <td
          key={column}
          {...roles.cell}
          className={classes(
            styles.cell,
            mapping.columns[column] === null && styles.out,
            doubt !== null && styles.doubtful,
          )}
        >
          <span className={styles.label} aria-hidden="true">
            {columnName(heads, column)}
          </span>
          <span>
            {text}
            {doubt !== null && (
              <span className={styles.doubt}>
                {" "}
                <strong>{words.look}</strong> {doubt}
              </span>
            )}
          </span>
        </td>
      ))}
    </tr>
  );
}

/** What a row was understood as. */
export function Thing({ row }: Readonly<{ row: RowView }>) {
  return (
    <span className={styles.understood}>
      {row.swatch && <Swatch item={row.swatch} width={44} height={30} />}
      <span>
        <span className={styles.name}>{row.name}</span>
        {row.facts !== "" && <span className={styles.facts}>{row.facts}</span>}
        {row.reason !== null && <span className={styles.facts}>{words.isHere(row.reason)}</span>}
      </span>
    </span>
  );
}
