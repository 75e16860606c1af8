import { memo, useMemo } from "react";
import type { Mark } from "./drawing.ts";
import { Marks } from "./marks.tsx";
import { drawPair, type SwatchItem } from "./pair.ts";
import styles from "./swatch.module.css";

type Props = Readonly<{ kit: SwatchItem; standIn: SwatchItem | null; width: number; height: number }>;
type PaneProps = Readonly<{ marks: readonly Mark[]; from: number; to: number; height: number }>;

/** A window on a drawing of full width. A nested svg cuts without an id, so any number fit on one page. */
function Pane({ marks, from, to, height }: PaneProps) {
  const width = to - from;
  return (
    <svg
      x={from}
      width={width}
      height={height}
      viewBox={`${from} 0 ${width} ${height}`}
      overflow="hidden"
      aria-hidden="true"
    >
      <Marks marks={marks} />
    </svg>
  );
}

/** A kit's supply and its stand-in, joined at the seam. Words must stand beside it. */
export const Pair = memo(function Pair({ kit, standIn, width, height }: Props) {
  const pair = useMemo(() => drawPair(kit, standIn, { width, height }), [kit, standIn, width, height]);
  // A pale hairline would open at the seam when scaled, so the left half reaches 1 px under the right.
  const under = standIn ? 1 : 0;
  return (
    <svg
      className={styles.swatch}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      <Marks marks={pair.ground} />
      <Pane marks={pair.left} from={0} to={pair.seam + under} height={height} />
      <Pane marks={pair.right} from={pair.seam} to={width} height={height} />
      <Marks marks={pair.over} />
    </svg>
  );
});
