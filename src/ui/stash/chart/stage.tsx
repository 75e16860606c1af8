import { type MouseEvent, useEffect, useMemo, useRef, useState } from "react";
import { chartWords as words } from "../../words/chart.ts";
import { format } from "../../words/index.ts";
import styles from "./chart.module.css";
import { Handle } from "./handle.tsx";
import { Loupe } from "./loupe.tsx";
import type { Chart, Photo } from "./use-chart.ts";
import { keptIn, type Mark, type Marks, nearestCorner, outlinesOf, placeOf, withMark } from "./view/marks.ts";

type Props = Readonly<{ photo: Photo; marks: Marks; onMarks: Chart["mark"] }>;

const marksIn = ({ paper }: Marks): readonly Mark[] => [
  ...[0, 1, 2, 3].map((at): Mark => ({ kind: "corner", at })),
  ...paper.map((_, at): Mark => ({ kind: "paper", at })),
];

const nameOf = ({ kind, at }: Mark): string =>
  kind === "corner" ? (words.corners[at] ?? "") : words.paperSpot(format.count(at + 1));

/** The photo with the squares drawn over it as they will be read, and its marks to be moved. */
export function Stage({ photo, marks, onMarks }: Props) {
  const stage = useRef<HTMLElement>(null);
  const [held, setHeld] = useState<Mark | null>(null);
  const { width, height } = photo;

  const placeAt = (event: Readonly<{ clientX: number; clientY: number }>) => {
    const box = stage.current?.getBoundingClientRect();
    if (!box) return null;
    const [x, y] = [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
    return keptIn(photo, { x: x * width, y: y * height });
  };
  /** A press beside the handles brings the nearest corner there: a phone can still scroll by the photo. */
  const bring = (event: MouseEvent) => {
    const to = event.target === event.currentTarget ? placeAt(event) : null;
    if (to) onMarks((now) => withMark(now, nearestCorner(now, to), to));
  };
  const loupeAt = held && placeOf(marks, held);
  return (
    // The keyboard has the handles themselves.
    // biome-ignore lint/a11y/useKeyWithClickEvents: as said above
    <section
      ref={stage}
      aria-label={words.stage}
      className={styles.stage}
      style={{ aspectRatio: `${width} / ${height}`, maxWidth: `calc(70vh * ${width / height})` }}
      onClick={bring}
    >
      <View photo={photo} />
      <Squares photo={photo} marks={marks} />
      {marksIn(marks).map((mark) => (
        <Handle
          key={`${mark.kind} ${mark.at}`}
          name={nameOf(mark)}
          number={format.count(mark.at + 1)}
          isPaper={mark.kind === "paper"}
          size={photo}
          place={placeOf(marks, mark) ?? { x: 0, y: 0 }}
          placeAt={placeAt}
          onPlace={(to) => onMarks((now) => withMark(now, mark, to))}
          onHeld={(is) => setHeld(is ? mark : null)}
        />
      ))}
      {loupeAt && <Loupe photo={photo} at={loupeAt} />}
    </section>
  );
}

/** The photo itself. */
function View({ photo: { view } }: Pick<Props, "photo">) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    canvas.current?.getContext("2d")?.drawImage(view, 0, 0);
  }, [view]);
  return <canvas ref={canvas} className={styles.view} width={view.width} height={view.height} />;
}

/** The outline of each swatch, light on dark so that it shows on any colour; the first and the last are numbered. */
function Squares({ photo: { width, height }, marks }: Pick<Props, "photo" | "marks">) {
  const lines = useMemo(
    () =>
      outlinesOf(marks)
        .map((corners) => `M${corners.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z`)
        .join(""),
    [marks],
  );
  return (
    <svg className={styles.squares} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path d={lines} className={styles.under} />
      <path d={lines} className={styles.line} />
    </svg>
  );
}
