import { memo, type ReactNode, useMemo, useState } from "react";
import { Marks } from "./marks.tsx";
import { drawPair, type SwatchItem } from "./pair.ts";
import styles from "./swatch.module.css";

type Props = Readonly<{ kit: SwatchItem; standIn: SwatchItem | null; width: number; height: number }>;
type PaneProps = Readonly<{ from: number; to: number; height: number; children: ReactNode }>;

/** A window on a drawing of full width. A nested svg cuts without an id, so any number fit on one page. */
function Pane({ from, to, height, children }: PaneProps) {
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
      {children}
    </svg>
  );
}

/** Whether the stand-in has changed since the pair first came on screen: only then does its half slide in. */
function useChanged(id: string | undefined): boolean {
  const [last, setLast] = useState(id);
  const [changed, setChanged] = useState(false);
  if (last !== id) {
    setLast(id);
    setChanged(true);
  }
  return changed;
}

/** A kit's supply and its stand-in, joined at the seam. Words must stand beside it. */
export const Pair = memo(function Pair({ kit, standIn, width, height }: Props) {
  const pair = useMemo(() => drawPair(kit, standIn, { width, height }), [kit, standIn, width, height]);
  const arriving = useChanged(standIn?.id) ? styles.arriving : undefined;
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
      <Pane from={0} to={pair.seam + under} height={height}>
        <Marks marks={pair.left} />
      </Pane>
      <Pane from={pair.seam} to={width} height={height}>
        <g key={standIn?.id ?? ""} className={arriving}>
          <Marks marks={pair.right} />
        </g>
      </Pane>
      <Marks marks={pair.over} />
    </svg>
  );
});
