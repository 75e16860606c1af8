import { useMemo, useRef, useState } from "react";
import { readLines } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addLine, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Beside, Button } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { today } from "../today.ts";
import { askedOf, entryView, type Fix, knownNames, lineOf, pieceAt, type SourceNote } from "../view/entry.ts";
import { Correct } from "./correct.tsx";
import styles from "./entry.module.css";
import { Pasted } from "./pasted.tsx";
import { SourceFields } from "./source-fields.tsx";
import { TypedLine } from "./typed-line.tsx";

const text = kitsWords.entry;

/** One field that takes a line as people write it, and shows at once how each piece was understood. */
export function Entry({ kit }: Readonly<{ kit: Kit }>) {
  const book = useBook((state) => state.book);
  const known = useMemo(() => knownNames(book), [book]);
  const [typed, setTyped] = useState("");
  const [fixes, setFixes] = useState<readonly Fix[]>([]);
  const [inHand, setInHand] = useState<string | null>(null);
  const [pasted, setPasted] = useState<string | null>(null);
  const [note, setNote] = useState<SourceNote | null>(null);
  const [said, setSaid] = useState("");
  const field = useRef<HTMLTextAreaElement>(null);
  const view = useMemo(() => entryView(typed, known, fixes), [typed, known, fixes]);
  const number = (kit.lines?.length ?? 0) + 1;
  const lineId = useMemo(() => newId("l", kit.lines), [kit.lines]);

  const clear = () => {
    setTyped("");
    setFixes([]);
    setInHand(null);
  };
  const add = () => {
    if (!view) return;
    if (readLines(typed, known).length > 1) return setPasted(typed);
    clear();
    field.current?.focus();
    setSaid(kitsWords.contents.added(number, view.supply.name));
    void doAct(addLine(kit, lineOf(lineId, view, note, today())), null);
  };
  const takeList = (list: string) => {
    if (readLines(list, known).length < 2) return false;
    setPasted(list);
    return true;
  };
  const hold = (next: string | null) => setInHand(next);

  if (pasted !== null) {
    const done = () => {
      setPasted(null);
      clear();
    };
    return <Pasted kit={kit} text={pasted} known={known} note={note} onNote={setNote} onDone={done} />;
  }
  const asks = view && askedOf(view, inHand);
  return (
    <Beside note={text.note}>
      <Band>
        <p className={styles.hint}>
          <span className={styles.number}>{number}</span> {text.hint}
        </p>
        <div className={styles.desk}>
          <div className={styles.line}>
            <TypedLine
              label={text.label(number)}
              value={typed}
              onValue={setTyped}
              view={view}
              inHand={inHand}
              onHand={hold}
              onCaret={(caret) => view && hold(pieceAt(view.pieces, caret)?.field ?? null)}
              onEnter={add}
              onPasted={takeList}
              fieldRef={field}
            />
            {asks === "colour" && !inHand?.startsWith("colour") && view?.supply.colour?.name && (
              <p className={styles.fact}>{text.colourOf(view.supply.colour.name)}</p>
            )}
            {view && asks && (
              <Correct
                key={asks}
                supply={view.supply}
                read={view.read}
                field={asks}
                onFix={(fix) => setFixes([...fixes.filter((other) => other.field !== fix.field), fix])}
              />
            )}
          </div>
          {view && (
            <figure className={styles.drawn}>
              <Swatch item={{ id: `${kit.id}/${lineId}`, supply: view.supply }} width={200} height={132} />
              <figcaption className={styles.fact}>
                <strong className={styles.made}>{view.supply.name}</strong>
                {view.caption}
              </figcaption>
            </figure>
          )}
        </div>
        <div className={styles.foot}>
          <div className={styles.fact}>
            {view?.kept && <p>{view.kept}</p>}
            {view && <p>{view.notSaid}</p>}
          </div>
          <SourceFields kitId={kit.id} note={note} onNote={setNote} />
          <Button kind="primary" notNow={view ? null : text.notYet} onClick={add}>
            {text.add(number)}
          </Button>
        </div>
        <p role="status" className="visually-hidden">
          {said}
        </p>
      </Band>
    </Beside>
  );
}
