import { memo, useMemo } from "react";
import { drawSwatch } from "./draw.ts";
import { Marks } from "./marks.tsx";
import type { SwatchItem } from "./pair.ts";
import styles from "./swatch.module.css";

type Props = Readonly<{ item: SwatchItem; width: number; height: number }>;

/** One supply, drawn. Words must stand beside it: it is hidden from screen readers. */
export const Swatch = memo(function Swatch({ item, width, height }: Props) {
  const { id, supply } = item;
  const drawing = useMemo(() => drawSwatch(supply, { width, height, seed: id }), [supply, id, width, height]);
  return (
    <svg
      className={styles.swatch}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      <Marks marks={drawing.marks} />
    </svg>
  );
});
