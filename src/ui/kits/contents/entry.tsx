import { lazy, Suspense, useMemo } from "react";
import type { Kit } from "../../../engine/worth/index.ts";
import { useOffer } from "../../app/acts.ts";
import { hasKeys } from "../../parts/has-keys.ts";
import { Beside, Button } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { actWords } from "../../words/acts.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { askedOf } from "../view/entry.ts";
import { Correct } from "./correct.tsx";
import styles from "./entry.module.css";
import { SourceFields } from "./source-fields.tsx";
import { Suggestions } from "./suggestions.tsx";
import { TypedLine } from "./typed-line.tsx";
import { type EntryState, useEntry } from "./use-entry.ts";

const PriceSaid = lazy(() => import("./price-said.tsx").then((module) => ({ default: module.PriceSaid })));
const Pasted = lazy(() => import("./pasted.tsx").then((module) => ({ default: module.Pasted })));

const text = kitsWords.entry;

type Props = Readonly<{ kit: Kit; entry: EntryState }>;

/** One field that takes a line as people write it, and shows at once how each piece was understood. */
export function Entry({ kit }: Readonly<{ kit: Kit }>) {
  const entry = useEntry(kit);
  const { pasted, known, note, setNote, number, said, field } = entry;
  useOffer(useMemo(() => [{ name: actWords.addLine, run: () => field.current?.focus() }], [field]));
  if (pasted !== null) {
    return (
      <Suspense fallback={null}>
        <Pasted kit={kit} text={pasted} known={known} note={note} onNote={setNote} onDone={entry.leaveList} />
      </Suspense>
    );
  }
  return (
    <Beside note={hasKeys() && text.note}>
      <Band>
        <p className={styles.hint}>
          <span className={styles.number}>{number}</span> {text.hint}
        </p>
        <div className={styles.desk}>
          <Written entry={entry} />
          <Drawn kit={kit} entry={entry} />
        </div>
        <Foot kit={kit} entry={entry} />
        <p role="status" className="visually-hidden">
          {said}
        </p>
      </Band>
    </Beside>
  );
}

/** The line itself, and the piece in hand with what else it could mean. */
function Written({ entry }: Pick<Props, "entry">) {
  const { view, inHand } = entry;
  const asks = view && askedOf(view, inHand);
  const colour = view?.supply.colour?.name;
  return (
    <div className={styles.line}>
      <TypedLine
        label={text.label(entry.number)}
        value={entry.typed}
        onValue={entry.setTyped}
        view={view}
        inHand={inHand}
        onHand={entry.hold}
        onCaret={entry.holdAt}
        onEnter={() => void entry.add()}
        onPasted={entry.takeList}
        fieldRef={entry.field}
        list={{
          controls: entry.box.listProps.id,
          active: entry.box.inputProps["aria-activedescendant"],
          onKeyDown: entry.box.inputProps.onKeyDown,
          onLeave: entry.box.close,
        }}
      />
      <Suggestions box={entry.box} rows={entry.rows} />
      {colour && asks === "colour" && view.asks === "colour" && (
        <p className={styles.fact}>{text.colourOf(colour)}</p>
      )}
      {view && asks && (
        <Correct key={asks} supply={view.supply} read={view.read} field={asks} onFix={entry.putRight} />
      )}
      {(entry.price || !entry.keepsPrice) && (
        <Suspense fallback={null}>
          <PriceSaid
            price={entry.price}
            keeps={entry.keepsPrice}
            onKeeps={entry.setKeepsPrice}
            currencies={entry.currencies}
            onCurrency={entry.setCurrency}
            kind={entry.saidKind}
            onKind={entry.setSaidKind}
          />
        </Suspense>
      )}
    </div>
  );
}

/** The supply as it was understood, drawing itself. */
function Drawn({ kit, entry: { view, lineId } }: Props) {
  if (!view) return null;
  return (
    <figure className={styles.drawn}>
      <Swatch item={{ id: `${kit.id}/${lineId}`, supply: view.supply }} width={200} height={132} />
      <figcaption className={styles.fact}>
        <strong className={styles.made}>{view.supply.name}</strong>
        {view.caption}
      </figcaption>
    </figure>
  );
}

/** What was not said or not understood, where the line is known from, and the act. */
function Foot({ kit, entry: { view, note, setNote, number, add } }: Props) {
  return (
    <div className={styles.foot}>
      <SourceFields kitId={kit.id} note={note} onNote={setNote} />
      <div className={styles.fact}>
        {view?.kept && <p>{view.kept}</p>}
        {view && <p>{view.notSaid}</p>}
      </div>
      <Button kind="primary" notNow={view ? null : text.notYet} onClick={() => void add()}>
        {text.add(number)}
      </Button>
    </div>
  );
}
