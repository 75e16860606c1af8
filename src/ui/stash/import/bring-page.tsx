import { useEffect } from "react";
import { useBook } from "../../../store/index.ts";
import { undoLast } from "../../app/do-act.ts";
import { saveFile } from "../../app/save-file.ts";
import { Acts, Button, ButtonLink, Fault, notify } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import { format } from "../../words/index.ts";
import { OtherPage } from "../other-page.tsx";
import { Arrived, Busy } from "./busy.tsx";
import { Choose, PickList } from "./choose.tsx";
import styles from "./import.module.css";
import { takePasted } from "./pasted.ts";
import { ReadList } from "./read-list.tsx";
import { type Bring, type Phase, useBring } from "./use-bring.ts";

/** Where a list or a file becomes things in the stash. */
export function BringPage() {
  const bring = useBring();
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page opens
  useEffect(() => {
    const text = takePasted();
    if (text !== null) void bring.takeText(text);
  }, []);
  return (
    <OtherPage words={words}>
      <Step bring={bring} phase={bring.phase} />
    </OtherPage>
  );
}

function Step({ bring, phase }: Readonly<{ bring: Bring; phase: Phase }>) {
  switch (phase.at) {
    case "choosing":
      return <Choose bring={bring} cancelled={phase.cancelled} />;
    case "opening":
      return <Busy text={words.opening(phase.name)} onCancel={bring.cancel} />;
    case "refused": {
      const { problem, remedy } = words.faults[phase.fault];
      return (
        <Fault
          title={words.refused(phase.name)}
          acts={<PickList bring={bring} label={words.pickAnother} kind="secondary" />}
        >
          {problem} {remedy} {words.nothingAdded}
        </Fault>
      );
    }
    case "reading":
      return <ReadList bring={bring} reading={phase} />;
    case "adding":
      return <Busy text={words.adding(format.count(phase.count), phase.count === 1)} />;
    case "done":
      return <Done bring={bring} phase={phase} />;
  }
}

type DoneProps = Readonly<{ bring: Bring; phase: Extract<Phase, { at: "done" }> }>;

function Done({ bring, phase }: DoneProps) {
  const { count, first, rest, restCount } = phase;
  const stands = useBook(({ book }) => (book.stash ?? []).some(({ id }) => id === first));
  useEffect(() => notify(words.added(format.count(count), count === 1), () => void undoLast()), [count]);
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
        {rest !== null && (
          <Button onClick={() => saveFile(words.restName, rest, "text/csv")}>
            {words.saveRest(format.count(restCount), restCount === 1)}
          </Button>
        )}
        <Button onClick={bring.startAgain}>{words.again}</Button>
      </Acts>
    </>
  );
}
