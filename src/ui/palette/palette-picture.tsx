import { useMemo } from "react";
import { classes, Section, Why } from "../parts/index.ts";
import { useRoom } from "../parts/use-room.ts";
import { format } from "../words/index.ts";
import { paletteWords as words } from "../words/palette.ts";
import { ColoursTable } from "./colours-table.tsx";
import { Disc } from "./disc.tsx";
import { Ladder } from "./ladder.tsx";
import { Legend } from "./legend.tsx";
import styles from "./palette.module.css";
import type { PlayedLine } from "./view/entries.ts";
import { layoutOf } from "./view/layout.ts";
import { type PaletteView, paletteOf } from "./view/palette.ts";

/** The kit's colours beside those of what plays them, as a picture and as a table. */
export function PalettePicture({ rows }: Readonly<{ rows: readonly PlayedLine[] }>) {
  const view = useMemo(() => paletteOf(rows, format), [rows]);
  if (!view) return null;
  return (
    <Section title={words.title} id="palette">
      <p>
        {view.finding} {view.more && <span className={styles.more}>{view.more}</span>}
      </p>
      <Picture view={view} />
      <Why about={words.title} label={words.table.open}>
        <ColoursTable rows={view.rows} />
      </Why>
    </Section>
  );
}

function Picture({ view }: Readonly<{ view: PaletteView }>) {
  const [ref, room] = useRoom();
  const layout = useMemo(() => room && layoutOf(view, room), [view, room]);
  return (
    <div ref={ref} className={styles.room}>
      {layout && (
        <figure className={classes(styles.figure, layout.beside && styles.beside)}>
          <div className={styles.disc}>
            <p className={styles.name}>{words.disc}</p>
            <Disc disc={layout.disc} text={words.discText(view.finding)} />
          </div>
          <div>
            <p className={styles.name}>{words.ladder}</p>
            <Ladder ladder={layout.ladder} />
          </div>
          <figcaption className={styles.caption}>
            <Legend alone={view.entries.some(({ alone }) => alone !== null)} />
            <p>{words.caption}</p>
          </figcaption>
        </figure>
      )}
    </div>
  );
}
