import { type DragEvent, useState } from "react";
import { Acts, ButtonLink, classes, FilePick } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { printWords } from "../../words/print.ts";
import { otherAddress } from "../item-link.tsx";
import styles from "./chart.module.css";
import type { Chart } from "./use-chart.ts";

type Props = Readonly<{ chart: Chart; label: string; camera?: boolean; kind?: "primary" | "secondary" }>;

/** The one way to choose the photo, or to take it. What it is, is told by what is in the file. */
export function PickPhoto({ chart, label, camera = false, kind = "secondary" }: Props) {
  return (
    <FilePick
      label={label}
      accept="image/*"
      camera={camera}
      kind={kind}
      onFiles={([file]) => file && void chart.take(file)}
    />
  );
}

/** A photo to choose, to take, or to drop, and what makes a good one. */
export function Choose({ chart, cancelled }: Readonly<{ chart: Chart; cancelled: string | null }>) {
  const [over, setOver] = useState(false);
  const hover = (event: DragEvent) => {
    event.preventDefault();
    setOver(true);
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const [file] = event.dataTransfer.files;
    if (file) void chart.take(file);
  };
  return (
    <div className={styles.choose}>
      <p role="status">{cancelled === null ? "" : words.cancelled(cancelled)}</p>
      <section
        aria-label={words.pick}
        className={classes(styles.drop, over && styles.over)}
        onDragOver={hover}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <Acts>
          <PickPhoto chart={chart} label={words.pick} kind="primary" />
          <PickPhoto chart={chart} label={words.take} camera />
        </Acts>
        <p className={styles.fact}>{words.drop}</p>
      </section>
      <p className={styles.fact}>{words.stays}</p>
      <p>
        {words.blank}{" "}
        <ButtonLink kind="quiet" to={otherAddress("print", "chart")}>
          {printWords.chartAct}
        </ButtonLink>
      </p>
      <div>
        <h2 className={styles.howHead}>{words.how}</h2>
        <ul className={styles.how}>
          {words.howTo.map((rule) => (
            <li key={rule}>{rule}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
