import { useState } from "react";
import { Acts, Button, Choice, Fault, Field, FieldRow } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { Arrived } from "../import/busy.tsx";
import styles from "./chart.module.css";
import { PickPhoto } from "./choose.tsx";
import { Stage } from "./stage.tsx";
import type { Chart, Marking } from "./use-chart.ts";
import { useTop } from "./use-top.ts";
import { asked, countIn, gapNames, keptIn, type Marks, whiteNames } from "./view/marks.ts";

type Props = Readonly<{ chart: Chart; marking: Marking }>;

/** The photo, where the chart lies in it, and how many swatches there are. */
export function Mark({ chart, marking }: Props) {
  const { photo, marks, reading, fault } = marking;
  const isReady = asked(marks) !== null;
  useTop();
  return (
    <>
      <Arrived>{words.marking}</Arrived>
      <p className={styles.told}>{words.markingText}</p>
      <Stage photo={photo} marks={marks} onMarks={chart.mark} />
      <Counts marks={marks} onMarks={chart.mark} />
      <Paper chart={chart} marking={marking} />
      {fault && (
        <Fault title={words.cannot}>
          {fault.problem}: {fault.remedy}.
        </Fault>
      )}
      <p role="status" className={styles.fact}>
        {reading ? words.reading : ""}
      </p>
      <Acts>
        <Button
          kind="primary"
          notNow={isReady ? reading && words.reading : words.readFirst}
          onClick={() => void chart.read(marking)}
        >
          {words.read}
        </Button>
        {reading && <Button onClick={chart.cancel}>{words.cancel}</Button>}
        <PickPhoto chart={chart} label={words.pickAnother} />
      </Acts>
    </>
  );
}

type CountsProps = Readonly<{ marks: Marks; onMarks: Chart["mark"] }>;

function Counts({ marks, onMarks }: CountsProps) {
  const fault = (text: string) => (text.trim() !== "" && countIn(text) === null ? words.count : undefined);
  return (
    <FieldRow>
      <Field
        label={words.rows}
        value={marks.rows}
        keys="numeric"
        fault={fault(marks.rows)}
        onValue={(rows) => onMarks((now) => ({ ...now, rows }))}
      />
      <Field
        label={words.columns}
        value={marks.columns}
        keys="numeric"
        fault={fault(marks.columns)}
        onValue={(columns) => onMarks((now) => ({ ...now, columns }))}
      />
      <Choice
        label={words.gap}
        value={marks.gap}
        options={gapNames.map((value) => ({ value, label: words.gaps[value] }))}
        onValue={(gap) => onMarks((now) => ({ ...now, gap }))}
      />
      <Choice
        label={words.white}
        value={marks.white}
        options={whiteNames.map((value) => ({ value, label: words.whites[value] }))}
        onValue={(white) => onMarks((now) => ({ ...now, white }))}
      />
    </FieldRow>
  );
}

/** Bare paper: found by itself, or pointed at with a first guess. */
function Paper({ chart, marking }: Props) {
  const [told, setTold] = useState<string | null>(null);
  const { photo, marks } = marking;
  const point = async () => {
    const guess = await chart.guessPaper(marking);
    setTold(guess ? words.pointed : words.noPoint);
    const spot = keptIn(photo, guess ?? { x: photo.width / 2, y: photo.height / 20 });
    chart.mark((now) => ({ ...now, paper: [...now.paper, spot] }));
  };
  const unpoint = () => {
    setTold(null);
    chart.mark((now) => ({ ...now, paper: now.paper.slice(0, -1) }));
  };
  return (
    <div className={styles.paper}>
      <h3>{words.paper}</h3>
      <p className={styles.fact}>{words.paperText}</p>
      <Acts>
        <Button kind="quiet" notNow={asked(marks) ? null : words.readFirst} onClick={() => void point()}>
          {words.pointAt}
        </Button>
        {marks.paper.length > 0 && (
          <Button kind="quiet" onClick={unpoint}>
            {words.unpoint}
          </Button>
        )}
      </Acts>
      <p role="status" className={styles.fact}>
        {marks.paper.length > 0 ? told : ""}
      </p>
    </div>
  );
}
