import { useMemo } from "react";
import { useRoom } from "../parts/use-room.ts";
import { Swatch } from "../swatch/index.ts";
import { format } from "../words/index.ts";
import styles from "./chart.module.css";
import type { Chart as ChartView } from "./view/chart.ts";
import { hatchPath } from "./view/hatch.ts";
import { type Layout, layoutOf, type PlacedRow, type PlacedTier } from "./view/layout.ts";

/** The kit laid end to end in money: three rows of swatches on one axis, each tier a line across them. */
export function Chart({ chart }: Readonly<{ chart: ChartView }>) {
  const [ref, room] = useRoom();
  const layout = useMemo(() => room && layoutOf(chart, room, format), [chart, room]);
  return (
    <figure className={styles.figure}>
      <div ref={ref} className={styles.room}>
        {layout && <Picture layout={layout} text={chart.text} />}
      </div>
      <figcaption className={styles.caption}>{chart.caption}</figcaption>
    </figure>
  );
}

function Picture({ layout, text }: Readonly<{ layout: Layout; text: string }>) {
  const { width, height, rows, tiers } = layout;
  return (
    <svg className={styles.picture} width={width} height={height} role="img" aria-label={text}>
      {rows.map((row) => (
        <Supplies key={row.row.key} row={row} height={layout.swatchHeight} />
      ))}
      <Axis layout={layout} />
      {tiers.map((tier) => (
        <TierLine key={tier.tier.id} tier={tier} axisY={layout.axisY} />
      ))}
      {rows.map((row) => (
        <RowWords key={row.row.key} row={row} />
      ))}
      {tiers.map((tier) => (
        <TierWords key={tier.tier.id} tier={tier} />
      ))}
    </svg>
  );
}

const tiny = 6;

function Supplies({ row, height }: Readonly<{ row: PlacedRow; height: number }>) {
  return (
    <g>
      {row.placed.map(({ key, piece, x, width }) => (
        <g key={key} transform={`translate(${x} ${row.top})`}>
          {width < tiny ? (
            <rect className={styles.sliver} width={width} height={height} />
          ) : (
            <Swatch item={piece.item} width={width} height={height} />
          )}
        </g>
      ))}
      <path className={styles.rule} d={`M0 ${row.base}H${row.end}`} />
      <path className={styles.rule} d={row.joints.map((x) => `M${x} ${row.base - 3}v6`).join("")} />
      <Bar row={row} />
    </g>
  );
}

const barHeight = 12;

/** From the least to the most the total may be; its look tells the rows apart without colour. */
function Bar({ row }: Readonly<{ row: PlacedRow }>) {
  const y = row.base - barHeight / 2;
  const box = { x: row.low, y, width: row.high - row.low, height: barHeight };
  const { key } = row.row;
  return (
    <g>
      {box.width > 0 && (
        <>
          <rect {...box} className={key === "street" ? styles.solid : styles.open} />
          {key === "list" && <path className={styles.hatch} d={hatchPath(box)} />}
        </>
      )}
      <path className={styles.halo} d={`M${row.total} ${y - 5}v${barHeight + 10}`} />
      <path className={styles.likely} d={`M${row.total} ${y - 5}v${barHeight + 10}`} />
    </g>
  );
}

function RowWords({ row }: Readonly<{ row: PlacedRow }>) {
  return (
    <g className={styles.words}>
      <text y={row.nameY}>
        {row.row.name}
        {row.amountX === null && (
          <tspan className={styles.amount} dx={8}>
            {row.row.amount}
          </tspan>
        )}
      </text>
      {row.amountX !== null && (
        <text className={styles.amount} x={row.amountX} y={row.base + 5}>
          {row.row.amount}
        </text>
      )}
      {row.placed.map(
        ({ key, label, mid }) =>
          label !== null && (
            <text key={key} className={styles.number} x={mid} y={row.numberY} textAnchor="middle">
              {label}
            </text>
          ),
      )}
    </g>
  );
}

function TierLine({ tier, axisY }: Readonly<{ tier: PlacedTier; axisY: number }>) {
  const { x, runs } = tier;
  const path = runs.map(([from, to]) => `M${x} ${from}V${to}`).join("");
  return (
    <g>
      <path className={styles.lineHalo} d={path} />
      <path className={styles.line} d={path} />
      <path className={styles.foot} d={`M${x} ${axisY - 8}l5 8h-10z`} />
    </g>
  );
}

function TierWords({ tier }: Readonly<{ tier: PlacedTier }>) {
  return (
    <text className={styles.tier} x={tier.labelX} y={tier.labelY} textAnchor={tier.anchor}>
      {tier.name} <tspan className={styles.strong}>{tier.tier.amount}</tspan>
    </text>
  );
}

function Axis({ layout }: Readonly<{ layout: Layout }>) {
  const { axisY, ticks, width, height } = layout;
  return (
    <g>
      <path className={styles.axis} d={`M0 ${axisY}H${width}`} />
      <path className={styles.axis} d={ticks.map(({ x }) => `M${x} ${axisY}v6`).join("")} />
      {ticks.map(({ x, text, anchor }) => (
        <text key={text} className={styles.number} x={x} y={height - 4} textAnchor={anchor}>
          {text}
        </text>
      ))}
    </g>
  );
}
