import { classes } from "../parts/index.ts";
import { Marks, MissLine } from "./marks.tsx";
import styles from "./palette.module.css";
import type { Disc as DiscView, PlacedWord } from "./view/disc.ts";

/** Hue as direction, strength as distance: hairline rings, the hues in words around them. */
export function Disc({ disc, text }: Readonly<{ disc: DiscView; text: string }>) {
  const { width, height, centre, radius, rings, ticks, words, figures, pairs, mark } = disc;
  return (
    <svg
      className={styles.picture}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={text}
    >
      <path
        className={styles.hairline}
        d={`M${centre.x - radius} ${centre.y}h${2 * radius}M${centre.x} ${centre.y - radius}v${2 * radius}`}
      />
      {rings.map((ring) => (
        <circle key={ring.chroma} className={styles.hairline} cx={centre.x} cy={centre.y} r={ring.radius} />
      ))}
      <circle className={styles.firm} cx={centre.x} cy={centre.y} r={radius} />
      <path
        className={styles.firm}
        d={ticks.map(([from, to]) => `M${from.x} ${from.y}L${to.x} ${to.y}`).join("")}
      />
      <Words words={figures} />
      <Words words={words} />
      {pairs.map((pair) => (
        <MissLine key={pair.line} {...pair} />
      ))}
      <path
        className={styles.leader}
        d={pairs
          .flatMap(({ leader }) =>
            leader ? [`M${leader[0].x} ${leader[0].y}L${leader[1].x} ${leader[1].y}`] : [],
          )
          .join("")}
      />
      <Marks pairs={pairs} size={mark} />
      {pairs.map(({ line, numbers, label, isMost }) => (
        <text
          key={line}
          className={classes(styles.number, isMost && styles.strong)}
          x={label.x}
          y={label.y}
          dy="0.34em"
          textAnchor="middle"
        >
          {numbers.join(", ")}
        </text>
      ))}
    </svg>
  );
}

const Words = ({ words }: Readonly<{ words: readonly PlacedWord[] }>) => (
  <g>
    {words.map(({ text, x, y, anchor }) => (
      <text key={text} className={styles.word} x={x} y={y} textAnchor={anchor}>
        {text}
      </text>
    ))}
  </g>
);
