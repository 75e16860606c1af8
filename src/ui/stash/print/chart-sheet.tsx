import { format } from "../../words/index.ts";
import { printWords } from "../../words/print.ts";
import styles from "./chart.module.css";
import { type ChartSheet, letterMm } from "./view/chart.ts";
import { cellAt, cornersOf, type Grid, sheet } from "./view/layout.ts";
import { marksAt, rulers } from "./view/lines.ts";

const words = printWords.chart;

type Props = Readonly<{ labels: ChartSheet; grid: Grid; at: number; all: number }>;

/** One sheet of a chart, drawn in millimetres: a plain, even grid with marks at its corners, and two rulers. */
export function ChartSheetView({ labels, grid, at, all }: Props) {
  const { rows, columns, cell } = grid;
  const [sheetText, allText] = [format.count(at), format.count(all)];
  const [rowsText, columnsText] = [format.count(rows), format.count(columns)];
  return (
    <svg
      className={styles.sheet}
      viewBox={`0 0 ${sheet.width} ${sheet.height}`}
      role="img"
      aria-label={words.picture(sheetText, allText, rowsText, columnsText)}
    >
      <rect className={styles.paper} width={sheet.width} height={sheet.height} />
      <text className={styles.title} x={0} y={5}>
        {words.title}
      </text>
      <text className={styles.fact} x={sheet.width} y={5} textAnchor="end">
        {words.sheetOf(sheetText, allText)}
      </text>
      <text className={styles.fact} x={0} y={9.5}>
        {words.grid(rowsText, columnsText, format.number(cell.width), format.number(cell.height))}
      </text>
      <path className={styles.line} d={cornersOf(grid).map(marksAt).join("")} />
      {Array.from({ length: rows * columns }, (_, place) => {
        const { x, y } = cellAt(grid, Math.floor(place / columns), place % columns);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: cells are told apart by their place alone
          <g key={place}>
            <rect className={styles.cell} x={x} y={y} width={cell.width} height={cell.height} />
            {(labels[place] ?? []).map((line, row) => (
              <text
                // biome-ignore lint/suspicious/noArrayIndexKey: so are the lines below a cell
                key={row}
                className={styles.label}
                x={x}
                y={y + cell.height + letterMm * (1.15 + row * 1.2)}
              >
                {line}
              </text>
            ))}
          </g>
        );
      })}
      {rulers.map(({ key, path, text }) => (
        <g key={key}>
          <path className={styles.line} d={path} />
          <text
            className={styles.fact}
            x={text.x}
            y={text.y}
            transform={text.turned ? `rotate(-90 ${text.x} ${text.y})` : undefined}
          >
            {words.ruler}
          </text>
        </g>
      ))}
    </svg>
  );
}
