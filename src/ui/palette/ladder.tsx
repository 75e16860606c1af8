import { classes } from "../parts/index.ts";
import { paletteWords as words } from "../words/palette.ts";
import { Marks, MissLine } from "./marks.tsx";
import styles from "./palette.module.css";
import type { Ladder as LadderView, Stave } from "./view/ladder.ts";

/** Lightness: rungs from black to white, each line's two marks in a column of its own. */
export function Ladder({ ladder }: Readonly<{ ladder: LadderView }>) {
  const { width, height, staves, numberY, mark } = ladder;
  return (
    <svg
      className={styles.picture}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words.ladderText}
    >
      {staves.map((stave) => (
        <g key={stave.key} transform={`translate(0 ${stave.top})`}>
          <Rungs ladder={ladder} stave={stave} />
          {stave.columns.map((column) => (
            <MissLine key={column.line} {...column} />
          ))}
          <Marks pairs={stave.columns} size={mark} />
          {stave.columns.map(({ line, number, kit, isMost }) => (
            <text
              key={line}
              className={classes(styles.number, isMost && styles.strong)}
              x={kit.x}
              y={numberY}
              textAnchor="middle"
            >
              {number}
            </text>
          ))}
        </g>
      ))}
    </svg>
  );
}

const Rungs = ({ ladder, stave }: Readonly<{ ladder: LadderView; stave: Stave }>) => (
  <g>
    {ladder.rungs.map(({ l, y, text }) => (
      <g key={l}>
        <path
          className={l === 0 || l === 100 ? styles.firm : styles.hairline}
          d={`M${stave.left} ${y}H${stave.right}`}
        />
        <text className={styles.word} x={stave.left - 10} y={y} dy="0.34em" textAnchor="end">
          {text}
        </text>
      </g>
    ))}
  </g>
);
