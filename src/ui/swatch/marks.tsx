import type { Mark, Paint } from "./drawing.ts";
import styles from "./swatch.module.css";

/** The theme's own tone for a surface; any other colour stays as computed, by day and by night. */
const toneOf = (paint: Paint) => (paint.startsWith("#") ? paint : `var(--${tokens[paint] ?? paint})`);

const tokens: Readonly<Record<string, string>> = { rule: "rule-2", edge: "chip-edge" };

/** Edge and seam change their width on paper, so the sheet of styles strokes them. */
function strokeOf(mark: Mark) {
  if (mark.stroke === "edge") return { className: styles.edge };
  if (mark.stroke === "seam") return { className: styles.seam };
  return mark.stroke ? { stroke: toneOf(mark.stroke) } : {};
}

function pathOf(mark: Mark, key: number) {
  return (
    <path
      key={key}
      d={mark.d}
      fill={mark.fill ? toneOf(mark.fill) : "none"}
      {...strokeOf(mark)}
      {...(mark.strokeWidth === undefined ? {} : { strokeWidth: mark.strokeWidth })}
      {...(mark.evenOdd ? { fillRule: "evenodd" } : {})}
      {...(mark.round ? { strokeLinecap: "round", strokeLinejoin: "round" } : {})}
      {...(mark.dash ? { strokeDasharray: mark.dash } : {})}
    />
  );
}

/** A drawing's marks as paths. They never move within a drawing, so their place is their key. */
export const Marks = ({ marks }: Readonly<{ marks: readonly Mark[] }>) => marks.map(pathOf);
