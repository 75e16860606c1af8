import { useDeferredValue, useMemo, useState } from "react";
import { readColourSet } from "../../../engine/intake/index.ts";
import { readLine } from "../../../engine/supply/index.ts";
import { addStashItems, language, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Field, FieldRow } from "../../parts/index.ts";
import { OfferedField, offersIn } from "../../supply-form/index.ts";
import { format } from "../../words/index.ts";
import { setWords as words } from "../../words/set.ts";
import { AddPlace } from "../add-place.tsx";
import { OtherPage } from "../other-page.tsx";
import { factsText } from "../view/known.ts";
import { newItems } from "../view/new-items.ts";
import styles from "./set.module.css";
import { SetRows } from "./set-rows.tsx";
import { setRows } from "./view/rows.ts";

const none: readonly never[] = [];

/** Where a whole set of colours is added in one go: what they all are, then number, name and colour of each. */
export function SetPage() {
  const book = useBook((state) => state.book);
  const stash = book.stash ?? none;
  const offers = useMemo(() => offersIn(book), [book]);
  const [what, setWhat] = useState("");
  const [maker, setMaker] = useState<string>();
  const [line, setLine] = useState<string>();
  const [list, setList] = useState("");
  const [place, setPlace] = useState<string | null>(null);
  const [out, setOut] = useState<ReadonlySet<number>>(new Set());
  const [tried, setTried] = useState(false);

  const read = useMemo(() => readLine(what, {}, language).supply, [what]);
  const colours = useDeferredValue(list);
  const rows = useMemo(() => {
    const base = { ...read, ...(maker ? { maker } : {}), ...(line ? { line } : {}) };
    return setRows(base, readColourSet(colours), stash);
  }, [read, maker, line, colours, stash]);
  const shown = rows.filter((row) => !out.has(row.place));
  const fresh = shown.filter((row) => row.not === null);
  const isOpen = what.trim() === "" || read.family === "other";

  const add = async () => {
    setTried(true);
    if (isOpen) return;
    const items = newItems(
      fresh.map(({ supply }) => ({ qty: 1, supply })),
      place,
      stash,
      (taken) => newId("st-", taken),
    );
    if (!(await doAct(addStashItems(items), words.added(format.count(items.length), items.length === 1))))
      return;
    setList("");
    setOut(new Set());
    setTried(false);
  };
  return (
    <OtherPage words={words}>
      <div className={styles.fields}>
        <Field
          label={words.what}
          hint={isOpen ? words.whatHint : words.understood(read.name, factsText(read))}
          value={what}
          fault={tried && isOpen ? words.whatMissing : undefined}
          onValue={setWhat}
        />
        <FieldRow>
          <OfferedField label={words.maker} value={maker} offers={offers.makers} onKeep={setMaker} />
          <OfferedField
            label={words.line}
            value={line}
            offers={offers.linesOf(maker ?? "")}
            onKeep={setLine}
          />
          <AddPlace place={place} onPlace={setPlace} />
        </FieldRow>
        <Field
          label={words.colours}
          hint={words.coloursHint}
          lines={8}
          value={list}
          onValue={(text) => {
            setList(text);
            setOut(new Set());
          }}
        />
      </div>
      <p role="status" className={styles.count}>
        {list.trim() !== "" && words.looked(format.count(fresh.length), fresh.length === 1)}
      </p>
      {shown.length > 0 && <SetRows rows={shown} onOut={(at) => setOut(new Set([...out, at]))} />}
      <Acts>
        <Button kind="primary" notNow={fresh.length > 0 ? null : words.notYet} onClick={() => void add()}>
          {fresh.length === 0 ? words.verbNone : words.verb(format.count(fresh.length), fresh.length === 1)}
        </Button>
      </Acts>
    </OtherPage>
  );
}
