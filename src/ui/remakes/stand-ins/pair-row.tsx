import { useMemo } from "react";
import type { LineMatch } from "../../../engine/match/index.ts";
import type { Line } from "../../../engine/price/index.ts";
import { Beside, classes, Nearness, Opened, useWhy, WhyButton } from "../../parts/index.ts";
import { usePrinting } from "../../parts/use-printing.ts";
import { Pair } from "../../swatch/index.ts";
import type { StandInActs } from "../use-stand-ins.ts";
import type { RowView } from "../view/rows.ts";
import type { Shelves } from "../view/solve.ts";
import type { StashOption } from "../view/stash-options.ts";
import { Mine } from "./mine.tsx";
import { OpenedRow } from "./opened-row.tsx";
import styles from "./rows.module.css";
import { useAfterSlide } from "./use-after-slide.ts";

type Props = Readonly<{
  row: RowView;
  line: Line;
  match: LineMatch;
  shelves: Shelves;
  options: readonly StashOption[];
  acts: StandInActs;
  isWashed: boolean;
  onAct: () => void;
}>;

/** In px; rows.module.css leaves as much room. */
const onScreen = { width: 336, height: 96 } as const;
const onPaper = { width: 192, height: 56 } as const;

/** One line: the kit's words, the pair, the stash's words, and how near. */
export function PairRow(props: Props) {
  const { row, isWashed, onAct } = props;
  const why = useWhy();
  const size = usePrinting() ? onPaper : onScreen;
  const chooserId = `${why.panelId}-choose`;
  const kit = useMemo(() => ({ id: row.line, supply: row.supply }), [row.line, row.supply]);
  const pickAnyway = () => {
    if (!why.open) why.toggle();
    setTimeout(() => document.getElementById(chooserId)?.focus()); // once the panel is there
  };
  const near = useAfterSlide({ figure: row.figure, words: row.near }, row.standIn?.item.id ?? null);
  const notes = row.notes.map((note) => <p key={note}>{note}</p>);
  return (
    // Capturing: whatever is done inside a row is about that row.
    <li data-line={row.line} className={styles.item} onClickCapture={onAct} onKeyDownCapture={onAct}>
      <Beside
        className={styles.row}
        aside={
          <p className={styles.aside}>
            <span className={styles.number}>{row.number}</span>
            <WhyButton why={why} about={row.name} />
          </p>
        }
        note={notes.length > 0 && notes}
      >
        <div className={classes(styles.grid, isWashed && styles.washed)}>
          <div className={styles.kit}>
            <h3>{row.name}</h3>
            <p className={styles.facts}>{row.facts}</p>
          </div>
          <div className={styles.pair}>
            <Pair kit={kit} standIn={row.standIn?.item ?? null} {...size} />
          </div>
          <Mine {...props} onPickAnyway={pickAnyway} />
          <div className={styles.near}>
            <Nearness {...near} />
          </div>
        </div>
      </Beside>
      <Opened why={why}>
        <OpenedRow {...props} chooserId={chooserId} />
      </Opened>
    </li>
  );
}
