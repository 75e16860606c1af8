import { useMemo } from "react";
import { useBook } from "../../../store/index.ts";
import { Field, FieldRow, Select } from "../../parts/index.ts";
import { OfferedField, offersIn } from "../../supply-form/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import { printWords } from "../../words/print.ts";
import { AddPlace } from "../add-place.tsx";
import { chartOrders } from "../print/view/order.ts";
import { factsText } from "../view/known.ts";
import styles from "./chart.module.css";
import type { StandsState } from "./use-stands.ts";
import { foundText } from "./view/things.ts";

type Props = Readonly<{ state: StandsState }>;

/** Things of the stash, found by what they have in common. */
export function StashFields({ state }: Props) {
  const { text, setText, found, cells, order, setOrder, start, setStart } = state;
  return (
    <>
      <Field kind="search" label={words.find} hint={words.findHint} value={text} onValue={setText} />
      <FieldRow>
        <Select
          label={printWords.chart.order}
          value={order}
          options={chartOrders.map((value) => ({ value, label: printWords.chart.orders[value] }))}
          onValue={setOrder}
        />
        <Field label={words.start} hint={words.startHint} keys="numeric" value={start} onValue={setStart} />
      </FieldRow>
      <p role="status" className={styles.fact}>
        {foundText(found.length, cells.length)}
      </p>
    </>
  );
}

/** New things: what they all are, said once, and their names. */
export function FreshFields({ state }: Props) {
  const book = useBook((store) => store.book);
  const offers = useMemo(() => offersIn(book), [book]);
  const { each, setEach, base, isOpen, maker, setMaker, line, setLine, names, setNames, place, setPlace } =
    state;
  return (
    <>
      <Field
        label={words.each}
        hint={isOpen ? words.eachHint : words.understood(base.name, factsText(base))}
        value={each}
        fault={each.trim() !== "" && isOpen ? words.eachMissing : undefined}
        asks
        onValue={setEach}
      />
      <FieldRow>
        <OfferedField label={words.maker} value={maker} offers={offers.makers} onKeep={setMaker} />
        <OfferedField label={words.line} value={line} offers={offers.linesOf(maker ?? "")} onKeep={setLine} />
        <AddPlace place={place} onPlace={setPlace} />
      </FieldRow>
      <Field label={words.names} hint={words.namesHint} lines={6} value={names} onValue={setNames} />
    </>
  );
}
