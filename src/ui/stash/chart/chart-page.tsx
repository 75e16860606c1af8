import { useBook } from "../../../store/index.ts";
import { Acts, Button, ButtonLink, Fault } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { format } from "../../words/index.ts";
import { photoWords } from "../../words/photos.ts";
import { Arrived, Busy } from "../import/busy.tsx";
import { OtherPage } from "../other-page.tsx";
import styles from "./chart.module.css";
import { Choose, PickPhoto } from "./choose.tsx";
import { Mark } from "./mark.tsx";
import { Result } from "./result.tsx";
import { type Chart, type Phase, type Refusal, useChart } from "./use-chart.ts";
import { useTop } from "./use-top.ts";

/** Where a photo of a swatch chart becomes colours of things. */
export function ChartPage() {
  const chart = useChart();
  return (
    <OtherPage words={words}>
      <Step chart={chart} phase={chart.phase} />
    </OtherPage>
  );
}

function Step({ chart, phase }: Readonly<{ chart: Chart; phase: Phase }>) {
  switch (phase.at) {
    case "choosing":
      return <Choose chart={chart} cancelled={phase.cancelled} />;
    case "opening":
      return <Busy text={words.opening(phase.name)} onCancel={chart.cancel} />;
    case "refused":
      return <Refused chart={chart} name={phase.name} fault={phase.fault} />;
    case "marking":
      return <Mark chart={chart} marking={phase} />;
    case "read":
      return <Result chart={chart} read={phase} />;
    case "done":
      return <Done chart={chart} phase={phase} />;
  }
}

type RefusedProps = Readonly<{ chart: Chart; name: string; fault: Refusal }>;

function Refused({ chart, name, fault }: RefusedProps) {
  const { problem, remedy } = fault === "unread" ? words.unread : photoWords.faults[fault];
  return (
    <Fault title={words.refused(name)} acts={<PickPhoto chart={chart} label={words.pickAnother} />}>
      {problem} {remedy} {words.nothingChanged}
    </Fault>
  );
}

type DoneProps = Readonly<{ chart: Chart; phase: Extract<Phase, { at: "done" }> }>;

function Done({ chart, phase: { count, act } }: DoneProps) {
  const stands = useBook(({ past }) => past.some(({ id }) => id === act));
  useTop();
  return (
    <>
      <Arrived>{words.done(format.count(count), count === 1)}</Arrived>
      <p role="status" className={styles.done}>
        {stands ? words.doneText : words.takenBack}
      </p>
      <Acts>
        <ButtonLink kind="primary" to={{ name: "stash" }}>
          {words.see}
        </ButtonLink>
        <Button onClick={chart.startAgain}>{words.again}</Button>
      </Acts>
    </>
  );
}
