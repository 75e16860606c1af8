import { useEffect, useRef } from "react";
import type { Point } from "../../../engine/colour/index.ts";
import { classes } from "../../parts/index.ts";
import styles from "./chart.module.css";
import type { Photo } from "./use-chart.ts";

type Props = Readonly<{ photo: Photo; at: Point }>;

const side = 144;
/** How much of the photo's longer side it shows. */
const shows = 1 / 14;

/** What lies under a mark, magnified, in the upper corner that is further from it: never under the finger. */
export function Loupe({ photo, at }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { view, width, height } = photo;
  useEffect(() => {
    const context = canvas.current?.getContext("2d");
    if (!context) return;
    const seen = shows * Math.max(view.width, view.height);
    const [x, y] = [(at.x / width) * view.width - seen / 2, (at.y / height) * view.height - seen / 2];
    context.clearRect(0, 0, side, side);
    context.drawImage(view, x, y, seen, seen, 0, 0, side, side);
    cross(context);
  }, [view, width, height, at]);
  const isLeft = at.x > width / 2;
  return (
    <div aria-hidden="true" className={classes(styles.loupe, isLeft && styles.loupeLeft)}>
      <canvas ref={canvas} width={side} height={side} />
    </div>
  );
}

/** A cross on the very spot, light on dark; the spot itself stays free. */
function cross(context: CanvasRenderingContext2D): void {
  const [middle, free] = [side / 2, 6];
  for (const [colour, width] of [
    ["#000", 3],
    ["#fff", 1],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.beginPath();
    for (const sign of [-1, 1]) {
      context.moveTo(middle + sign * free, middle);
      context.lineTo(middle + sign * middle, middle);
      context.moveTo(middle, middle + sign * free);
      context.lineTo(middle, middle + sign * middle);
    }
    context.stroke();
  }
}
