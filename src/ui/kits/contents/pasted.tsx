import { useEffect, useMemo, useRef, useState } from "react";
import { type KnownNames, readLines } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addLines, language, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Section } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { today } from "../today.ts";
import { lineOf, type SourceNote } from "../view/entry.ts";
import { type PastedLine, pastedLine, pastedRow } from "../view/pasted.ts";
import { currenciesOf, evidenceSaid, type SaidKind } from "../view/price-said.ts";
import styles from "./entry.module.css";
import { PastedRowItem } from "./pasted-row.tsx";
import { KindOfPrices } from "./price-said.tsx";
import { SourceFields } from "./source-fields.tsx";

const words = kitsWords.entry;

type Props = Readonly<{
  kit: Kit;
  text: string;
  known: KnownNames;
  note: SourceNote | null;
  onNote: (note: SourceNote | null) => void;
  onDone: () => void;
}>;

/** A pasted list, line by line as it was understood, each to be put right or taken out before any is added. */
export function Pasted({ kit, text, known, note, onNote, onDone }: Props) {
  const book = useBook((state) => state.book);
  const [lines, setLines] = useState<readonly PastedLine[]>(() =>
    readLines(text, known, language).map((line, place) => pastedLine(line.text, place)),
  );
  const [open, setOpen] = useState<number | null>(null);
  const [kind, setKind] = useState<SaidKind>("card");
  const [currency, setCurrency] = useState<string | null>(null);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const rows = useMemo(() => lines.flatMap((line) => pastedRow(line, known) ?? []), [lines, known]);
  const change = (place: number, part: Partial<PastedLine>) =>
    setLines((all) => all.map((line) => (line.place === place ? { ...line, ...part } : line)));
  const moneyOf = ({ view: { price } }: (typeof rows)[number]) => {
    const all = price ? currenciesOf(price, book) : [];
    const [likely] = all;
    if (!price || !likely) return null;
    return { amount: price.amount, currency: currency && all.includes(currency) ? currency : likely };
  };
  const add = async () => {
    const ids = [...(kit.lines ?? [])].map(({ id }) => ({ id }));
    const made = rows.map((row) => {
      const id = newId("l", ids);
      ids.push({ id });
      const price = moneyOf(row);
      const source = note?.source ?? null;
      const found = price ? [evidenceSaid("e1", price, kind, source, today(), book)] : [];
      return lineOf(id, row.view, note, today(), found);
    });
    if (await doAct(addLines(kit, made), words.allAdded(made.length))) onDone();
  };
  return (
    <Band>
      <Section title={words.pasted(rows.length)}>
        <p className={styles.fact}>{words.pastedText}</p>
        <ol className={styles.pasted}>
          {lines.map((line) => (
            <PastedRowItem
              key={line.place}
              {...{ kit, line, known, setCurrency }}
              row={rows.find((row) => row.line.place === line.place) ?? null}
              price={moneyOf}
              open={open === line.place}
              onToggle={() => setOpen(open === line.place ? null : line.place)}
              onChange={(part) => change(line.place, part)}
              onOut={() => setLines(lines.filter((other) => other !== line))}
            />
          ))}
        </ol>
        <div className={styles.pastedSource}>
          <SourceFields kitId={kit.id} note={note} onNote={onNote} />
          {rows.some(({ view }) => view.price) && <KindOfPrices kind={kind} onKind={setKind} />}
        </div>
        <Acts>
          <Button ref={first} kind="primary" notNow={rows.length > 0 ? null : words.notYet} onClick={add}>
            {words.addAll(rows.length)}
          </Button>
          <Button onClick={onDone}>{words.drop}</Button>
        </Acts>
      </Section>
    </Band>
  );
}
