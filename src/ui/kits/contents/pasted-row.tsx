import { useRef, useState } from "react";
import type { Money } from "../../../engine/money/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { useBook } from "../../../store/index.ts";
import { Button, classes, Select, Tick } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { askedOf, type EntryView, type Fix, pieceAt } from "../view/entry.ts";
import type { PastedLine, PastedRow } from "../view/pasted.ts";
import { currenciesOf } from "../view/price-said.ts";
import { Correct } from "./correct.tsx";
import styles from "./entry.module.css";
import { TypedLine } from "./typed-line.tsx";

const text = kitLogWords.pasted;

type Props = Readonly<{
  kit: Kit;
  line: PastedLine;
  /** As it is understood; null once nothing is written in it. */
  row: PastedRow | null;
  price: (row: PastedRow) => Money | null;
  setCurrency: (currency: string) => void;
  open: boolean;
  onToggle: () => void;
  onChange: (part: Partial<PastedLine>) => void;
  onOut: () => void;
}>;

/** One line of a pasted list: what was written with its parts marked, what it was understood as, and both in place. */
export function PastedRowItem({ kit, line, row, open, onToggle, onOut, ...rest }: Props) {
  const name = row?.view.supply.name ?? line.text;
  const about = <span className="visually-hidden">{kitsWords.contents.about(name)}</span>;
  return (
    <li className={styles.pastedLine}>
      {row ? (
        <Swatch
          item={{ id: `${kit.id}/pasted ${line.place}`, supply: row.view.supply }}
          width={88}
          height={40}
        />
      ) : (
        <span />
      )}
      <div className={styles.pastedWords}>
        {row && (
          <p>
            <strong>{name}</strong> <span>{row.facts}</span>
          </p>
        )}
        {open ? (
          <InPlace {...rest} line={line} view={row?.view ?? null} onDone={onToggle} />
        ) : (
          <p className={styles.fact}>
            {row && <Marked view={row.view} />} {row?.view.kept}
          </p>
        )}
        {row && <Price row={row} line={line} {...rest} />}
      </div>
      <span className={styles.pastedActs}>
        <Button kind="quiet" className={styles.small ?? ""} aria-expanded={open} onClick={onToggle}>
          {open ? text.done : text.change}
          {about}
        </Button>
        <Button kind="quiet" className={styles.small ?? ""} onClick={onOut}>
          {kitsWords.entry.takeOut}
          {about}
        </Button>
      </span>
    </li>
  );
}

/** What was written, each part that was understood underlined; its readings are what stands above it. */
const Marked = ({ view }: Readonly<{ view: EntryView }>) => (
  <span>
    {view.stretches.map(({ key, text: stretch, piece }) => (
      <span key={key} className={classes(piece && styles.marked)}>
        {stretch}
      </span>
    ))}
  </span>
);

type InPlaceProps = Pick<Props, "line" | "onChange"> &
  Readonly<{ view: EntryView | null; onDone: () => void }>;

function InPlace({ line, view, onChange, onDone }: InPlaceProps) {
  const [inHand, setInHand] = useState<string | null>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  const asks = view && askedOf(view, inHand);
  const putRight = (fix: Fix) =>
    onChange({ fixes: [...line.fixes.filter((other) => other.field !== fix.field), fix] });
  return (
    <div className={styles.inPlace}>
      <TypedLine
        label={text.label(line.place + 1)}
        value={line.text}
        onValue={(typed) => onChange({ text: typed })}
        view={view}
        inHand={inHand}
        onHand={setInHand}
        onCaret={(caret) => setInHand((view && pieceAt(view.pieces, caret)?.field) ?? null)}
        onEnter={onDone}
        onPasted={() => false}
        fieldRef={field}
      />
      {view?.kept && <p className={styles.fact}>{view.kept}</p>}
      {view && asks && (
        <Correct key={asks} supply={view.supply} read={view.read} field={asks} onFix={putRight} />
      )}
    </div>
  );
}

type PriceProps = Pick<Props, "line" | "price" | "setCurrency" | "onChange"> & Readonly<{ row: PastedRow }>;

/** A price in the line, to be kept as one; and which currency, where its sign may stand for several. */
function Price({ row, line, price, setCurrency, onChange }: PriceProps) {
  const book = useBook((state) => state.book);
  const money = price(row);
  const currencies = row.view.price ? currenciesOf(row.view.price, book) : [];
  if (!money && line.keepsPrice) return null;
  return (
    <div className={styles.price}>
      <Tick
        label={money ? text.price(format.money(money)) : text.priceInName}
        value={line.keepsPrice}
        onValue={(keepsPrice) => onChange({ keepsPrice })}
      />
      {money && currencies.length > 1 && (
        <Select
          label={text.currency}
          value={money.currency}
          options={currencies.map((value) => ({ value, label: value }))}
          onValue={setCurrency}
        />
      )}
    </div>
  );
}
