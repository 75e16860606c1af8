import { useMemo } from "react";
import { newId, takeColours, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Choice, Section } from "../../parts/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { format } from "../../words/index.ts";
import { Arrived } from "../import/busy.tsx";
import { newItems } from "../view/new-items.ts";
import { CellRows } from "./cell-rows.tsx";
import styles from "./chart.module.css";
import type { Chart, Result as Read } from "./use-chart.ts";
import { type StandsState, useStands, type What } from "./use-stands.ts";
import { useTop } from "./use-top.ts";
import { type Kept, keptOf, readingText } from "./view/cells.ts";
import { FreshFields, StashFields } from "./what-fields.tsx";

const whats: readonly What[] = ["stash", "fresh"];

/** Keeps the colours, all as one act; how many things have one by it, and the act's id. */
async function keep({ changed, added }: Kept, place: string | null) {
  const stash = useBook.getState().book.stash ?? [];
  const written = added.map((supply) => ({ qty: 1, supply }));
  const items = newItems(written, place, stash, (taken) => newId("st-", taken));
  const [changes, adds] = [changed.length, items.length];
  const told =
    adds > 0 ? words.added(format.count(adds), adds === 1) : words.kept(format.count(changes), changes === 1);
  const isKept = await doAct(takeColours(changed, items), told);
  const measured = items.filter(({ supply }) => supply.colour?.from === "measured");
  const act = useBook.getState().past.at(-1)?.id ?? "";
  return isKept ? { count: changes + measured.length, act } : null;
}

type Props = Readonly<{ chart: Chart; read: Read }>;

/** The colours as they were read, what they are the colours of, and what is kept when told to. */
export function Result({ chart, read }: Props) {
  const state = useStands(read.result.cells);
  const text = useMemo(() => readingText(read.result), [read.result]);
  const { cells, twice, what } = state;
  const kept = useMemo(() => keptOf(cells, twice), [cells, twice]);
  const count = kept.changed.length + kept.added.length;
  const verb = what === "fresh" ? words.add : words.keep;
  useTop();
  return (
    <>
      <Arrived>{text.title}</Arrived>
      <p className={styles.told}>{text.more}</p>
      <Acts>
        <Button kind="quiet" onClick={() => chart.markAnew(read)}>
          {words.markAnew}
        </Button>
      </Acts>
      <Section title={words.what}>
        <Whats state={state} />
      </Section>
      <Section title={words.list}>
        <CellRows state={state} />
      </Section>
      <Acts>
        <Button
          kind="primary"
          notNow={count === 0 && words.keepNone}
          onClick={async () => {
            const done = await keep(kept, what === "fresh" ? state.place : null);
            if (done) chart.finish(done.count, done.act);
          }}
        >
          {verb(format.count(count), count === 1)}
        </Button>
      </Acts>
    </>
  );
}

function Whats({ state }: Readonly<{ state: StandsState }>) {
  return (
    <div className={styles.what}>
      <Choice
        label={words.what}
        labelHidden
        value={state.what}
        options={whats.map((value) => ({ value, label: words.whats[value] }))}
        onValue={state.setWhat}
      />
      {state.what === "stash" ? <StashFields state={state} /> : <FreshFields state={state} />}
    </div>
  );
}
