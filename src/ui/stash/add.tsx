import { useEffect, useMemo, useRef, useState } from "react";
import { readLines } from "../../engine/supply/index.ts";
import { addStashItem, addStashItems, language, newId, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Band } from "../kits/band.tsx";
import entry from "../kits/contents/entry.module.css";
import { TypedLine } from "../kits/contents/typed-line.tsx";
import { entryView, type Fix, knownNames, pieceAt } from "../kits/view/entry.ts";
import { hasKeys } from "../parts/has-keys.ts";
import { Acts, Beside, Button, ButtonLink } from "../parts/index.ts";
import { isFocusLost } from "../parts/use-focus.ts";
import { actWords } from "../words/acts.ts";
import { stashWords } from "../words/stash.ts";
import styles from "./add.module.css";
import { AddPlace } from "./add-place.tsx";
import { Drawn } from "./drawn.tsx";
import { bringPasted, isTable } from "./import/pasted.ts";
import { otherAddress } from "./item-link.tsx";
import { PastedList } from "./pasted-list.tsx";
import { Asked } from "./put-right.tsx";
import { newItems, type Written } from "./view/new-items.ts";

const words = stashWords.adding;

/** Keeps what was written, as new items of the stash. */
function addAll(written: readonly Written[], place: string | null, told: string | null): Promise<boolean> {
  const { stash } = useBook.getState().book;
  const items = newItems(written, place, stash ?? [], (taken) => newId("st-", taken));
  const [only] = items;
  return doAct(only && items.length === 1 ? addStashItem(only) : addStashItems(items), told);
}

type Props = Readonly<{
  /** How often it was asked for: each time the field takes the focus. */
  asked: number;
  onDone: () => void;
  /** The bar code's number of the one thing that is added. */
  gtin?: string;
}>;

/** One field that takes what people write; Enter adds it, and the focus stays. */
export function AddToStash({ asked, onDone, gtin }: Props) {
  const book = useBook((state) => state.book);
  const known = useMemo(() => knownNames(book), [book]);
  const [typed, setTyped] = useState("");
  const [fixes, setFixes] = useState<readonly Fix[]>([]);
  const [inHand, setInHand] = useState<string | null>(null);
  const [pasted, setPasted] = useState<string | null>(null);
  const [place, setPlace] = useState<string | null>(null);
  const [last, setLast] = useState<Readonly<{ text: string; fixes: readonly Fix[]; name: string }> | null>(
    null,
  );
  const field = useRef<HTMLTextAreaElement>(null);
  const view = useMemo(() => entryView(typed, known, fixes), [typed, known, fixes]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each time it is asked for
  useEffect(() => field.current?.focus(), [asked]);
  useEffect(() => {
    if (pasted === null && isFocusLost()) field.current?.focus(); // a list has been dealt with
  }, [pasted]);
  const write = (text: string, kept: readonly Fix[] = []) => {
    setTyped(text);
    setFixes(kept);
    setInHand(null);
    field.current?.focus();
  };
  const takeList = (list: string) => {
    if (gtin !== undefined) return false;
    if (isTable(list)) {
      bringPasted(list);
      return true;
    }
    if (readLines(list, known, language).length < 2) return false;
    setPasted(list);
    return true;
  };
  const add = () => {
    if (!view) return;
    if (gtin !== undefined) {
      const supply = { ...view.supply, gtin };
      void addAll([{ ...view, supply }], place, words.added(supply.name)).then(onDone);
      return;
    }
    if (takeList(typed)) return;
    setLast({ text: typed, fixes, name: view.supply.name });
    write("");
    void addAll([view], place, null);
  };
  if (pasted !== null) {
    return (
      <PastedList
        text={pasted}
        known={known}
        where={<AddPlace place={place} onPlace={setPlace} />}
        onDrop={() => setPasted(null)}
        onAdd={async (written) => {
          if (!(await addAll(written, place, words.addedMany(written.length)))) return;
          setPasted(null);
          setTyped("");
          setLast(null); // what was told of the one before is old news
        }}
      />
    );
  }
  return (
    <Beside note={gtin === undefined && hasKeys() && words.note}>
      <Band>
        {gtin === undefined && <p className={entry.fact}>{words.hint}</p>}
        <div className={entry.desk}>
          <div className={entry.line}>
            <TypedLine
              label={words.label}
              value={typed}
              onValue={setTyped}
              view={view}
              inHand={inHand}
              onHand={setInHand}
              onCaret={(caret) => view && setInHand(pieceAt(view.pieces, caret)?.field ?? null)}
              onEnter={add}
              onPasted={takeList}
              fieldRef={field}
            />
            <Asked view={view} inHand={inHand} fixes={fixes} onFixes={setFixes} />
          </div>
          {view && <Drawn view={view} />}
        </div>
        <div className={styles.foot}>
          <p role="status" className={entry.fact}>
            {last && typed === ""
              ? words.added(last.name)
              : [view?.kept, view?.notSaid].filter(Boolean).join(" ")}
          </p>
          <AddPlace place={place} onPlace={setPlace} />
          <Acts>
            <Button kind="primary" notNow={view ? null : words.notYet} onClick={add}>
              {words.verb}
            </Button>
            {last && typed === "" && (
              <Button onClick={() => write(last.text, last.fixes)}>{words.again(last.name)}</Button>
            )}
            {gtin === undefined && <OtherWays />}
            <Button kind="quiet" onClick={onDone}>
              {words.done}
            </Button>
          </Acts>
        </div>
      </Band>
    </Beside>
  );
}

/** Ways to add more than one thing, or to see whether it is there. */
const OtherWays = () => (
  <>
    <ButtonLink kind="quiet" to={otherAddress("bring", "list")}>
      {actWords.bringIn}
    </ButtonLink>
    <ButtonLink kind="quiet" to={otherAddress("set", "new")}>
      {actWords.addSet}
    </ButtonLink>
    <ButtonLink kind="quiet" to={otherAddress("chart", "photo")}>
      {actWords.chart}
    </ButtonLink>
    <ButtonLink kind="quiet" to={otherAddress("code", "find")}>
      {actWords.barCode}
    </ButtonLink>
  </>
);
