import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import type { Point } from "../../../engine/colour/index.ts";
import { classes } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { format } from "../../words/index.ts";
import styles from "./chart.module.css";
import { type Size, steppedBy } from "./view/marks.ts";

type Props = Readonly<{
  name: string;
  number: string;
  isPaper: boolean;
  size: Size;
  place: Point;
  /** The place in the photo under a pointer. */
  placeAt: (event: Readonly<{ clientX: number; clientY: number }>) => Point | null;
  onPlace: (to: Point) => void;
  /** Whether it is being moved, by a pointer or by keys. */
  onHeld: (is: boolean) => void;
}>;

/** A mark on the photo that can be moved: dragged, or by the arrow keys, further with Shift. */
export function Handle({ name, number, isPaper, size, place, placeAt, onPlace, onHeld }: Props) {
  // How far from the mark it was taken hold of, so that it does not jump under the finger.
  const grip = useRef<Point | null>(null);
  const [across, down] = [(100 * place.x) / size.width, (100 * place.y) / size.height];

  const press = (event: PointerEvent<HTMLButtonElement>) => {
    const from = placeAt(event);
    if (!from || event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = { x: place.x - from.x, y: place.y - from.y };
    onHeld(true);
  };
  const move = (event: PointerEvent) => {
    const to = grip.current && placeAt(event);
    if (!to || !grip.current) return;
    onPlace({
      x: Math.min(size.width, Math.max(0, to.x + grip.current.x)),
      y: Math.min(size.height, Math.max(0, to.y + grip.current.y)),
    });
  };
  const letGo = () => {
    grip.current = null;
    onHeld(false); // the magnified look may lie on another corner
  };
  const key = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const to = steppedBy(event.key, event.shiftKey, place, size);
    if (!to) return;
    event.preventDefault();
    onHeld(true);
    onPlace(to);
  };
  return (
    <button
      type="button"
      role="slider"
      aria-label={name}
      aria-roledescription={words.spot}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(across)}
      aria-valuetext={words.at(format.number(across, 1), format.number(down, 1))}
      className={classes(styles.handle, isPaper && styles.paperHandle)}
      style={{ left: `${across}%`, top: `${down}%` }}
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onKeyDown={key}
      onFocus={() => onHeld(true)}
      onBlur={() => onHeld(false)}
    >
      <span aria-hidden="true" className={styles.knob} />
      <span aria-hidden="true" className={styles.tag}>
        {number}
      </span>
    </button>
  );
}
