import { classes } from "../parts/index.ts";
import styles from "./palette.module.css";
import type { Point } from "./view/room.ts";

type MarkProps = Readonly<{ at: Point; size: number; fill: string }>;

/** The kit's colour: round, with a pale edge that keeps it to be seen on a square of its own colour. */
export const KitMark = ({ at, size, fill }: MarkProps) => (
  <g>
    <circle className={styles.edge} cx={at.x} cy={at.y} r={size} />
    <circle className={styles.mark} cx={at.x} cy={at.y} r={size} fill={fill} />
  </g>
);

/** The stand-in's: square, so large that the round one lies within it where they are the same. */
export function StandInMark({ at, size, fill }: MarkProps) {
  const half = size + 1.75;
  return (
    <rect
      className={styles.mark}
      x={at.x - half}
      y={at.y - half}
      width={2 * half}
      height={2 * half}
      fill={fill}
    />
  );
}

/** The kit's colour with nothing beside it: round, in a dashed ring. */
export const AloneMark = ({ at, size, fill }: MarkProps) => (
  <g>
    <circle className={styles.dashed} cx={at.x} cy={at.y} r={size + 3.5} />
    <KitMark at={at} size={size - 0.5} fill={fill} />
  </g>
);

type PairProps = Readonly<{
  line: string;
  kit: Point;
  kitHex: string;
  standIn: Point | null;
  standInHex: string | null;
  isMost: boolean;
}>;

/** The line between the middles of the two marks, whose length is the miss. */
export function MissLine({ kit, standIn, isMost }: PairProps) {
  if (!standIn) return null;
  const line = `M${kit.x} ${kit.y}L${standIn.x} ${standIn.y}`;
  return (
    <g>
      <path className={styles.halo} d={line} />
      <path className={classes(styles.miss, isMost && styles.most)} d={line} />
    </g>
  );
}

/** All marks, so that the small lie on the large: squares, then rounds, then those that stand alone. */
export function Marks({ pairs, size }: Readonly<{ pairs: readonly PairProps[]; size: number }>) {
  const joined = pairs.filter(({ standIn }) => standIn !== null);
  const alone = pairs.filter(({ standIn }) => standIn === null);
  return (
    <g>
      {joined.map(
        ({ line, standIn, standInHex }) =>
          standIn && <StandInMark key={line} at={standIn} size={size} fill={standInHex ?? "none"} />,
      )}
      {joined.map(({ line, kit, kitHex }) => (
        <KitMark key={line} at={kit} size={size} fill={kitHex} />
      ))}
      {alone.map(({ line, kit, kitHex }) => (
        <AloneMark key={line} at={kit} size={size} fill={kitHex} />
      ))}
    </g>
  );
}
