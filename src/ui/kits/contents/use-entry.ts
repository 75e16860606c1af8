import { useMemo, useRef, useState } from "react";
import type { Money } from "../../../engine/money/index.ts";
import { readLines } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addLine, language, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { useCombobox } from "../../parts/use-combobox.ts";
import { isFocusLost } from "../../parts/use-focus.ts";
import { kitsWords } from "../../words/kits.ts";
import { today } from "../today.ts";
import {
  entryView,
  type Fix,
  knownNames,
  lineOf,
  pieceAt,
  type SourceNote,
  type Taken,
  takenView,
} from "../view/entry.ts";
import { currenciesOf, evidenceSaid, type SaidKind } from "../view/price-said.ts";
import { countedIn, suggestionsFor } from "../view/suggest.ts";

const isThere = (kitId: string, lineId: string): boolean => {
  const kit = useBook.getState().book.kits?.find(({ id }) => id === kitId);
  return (kit?.lines ?? []).some(({ id }) => id === lineId);
};

/** The line being written: its text, how it was understood, what was put right of it, and the piece in hand. */
export function useEntry(kit: Kit) {
  const book = useBook((state) => state.book);
  const known = useMemo(() => knownNames(book), [book]);
  const [keepsPrice, setKeepsPrice] = useState(true);
  const [currency, setCurrency] = useState<string | null>(null);
  const [saidKind, setSaidKind] = useState<SaidKind>("card");
  const [typed, setTyped] = useState("");
  const [fixes, setFixes] = useState<readonly Fix[]>([]);
  const [inHand, setInHand] = useState<string | null>(null);
  const [pasted, setPasted] = useState<string | null>(null);
  const [note, setNote] = useState<SourceNote | null>(null);
  const [said, setSaid] = useState("");
  const field = useRef<HTMLTextAreaElement>(null);
  const [taken, setTaken] = useState<Taken | null>(null);
  const isTaken = taken?.text === typed;
  const view = useMemo(
    () =>
      taken?.text === typed ? takenView(taken) : entryView(typed, { ...known, prices: keepsPrice }, fixes),
    [typed, known, fixes, keepsPrice, taken],
  );
  const rows = useMemo(() => (isTaken ? [] : suggestionsFor(book, kit, typed)), [book, kit, typed, isTaken]);
  const box = useCombobox({
    count: rows.length,
    onPick: (index) => {
      const picked = rows[index];
      if (!picked) return;
      const { qty } = countedIn(typed);
      const text = qty > 1 ? `${qty} ${picked.name}` : picked.name;
      setTaken({ text, qty, supply: picked.supply, kit: picked.kit });
      setTyped(text);
    },
  });
  const type = (text: string) => {
    setTyped(text);
    if (text.trim() === "") box.close();
    else box.show();
  };
  const currencies = view?.price ? currenciesOf(view.price, book) : [];
  const price: Money | null =
    view?.price && currencies[0]
      ? {
          amount: view.price.amount,
          currency: currency && currencies.includes(currency) ? currency : currencies[0],
        }
      : null;
  const number = (kit.lines?.length ?? 0) + 1;
  const lineId = useMemo(() => newId("l", kit.lines), [kit.lines]);

  const clear = () => {
    setTyped("");
    setFixes([]);
    setInHand(null);
    setTaken(null);
    box.close();
    setKeepsPrice(true);
  };
  /** Takes a text of several lines to be looked over; false where it is one line only. */
  const takeList = (list: string): boolean => {
    if (readLines(list, known, language).length < 2) return false;
    setPasted(list);
    return true;
  };
  const add = async () => {
    if (!view || takeList(typed)) return;
    const found = price ? [evidenceSaid("e1", price, saidKind, note?.source ?? null, today(), book)] : [];
    clear();
    field.current?.focus();
    await doAct(addLine(kit, lineOf(lineId, view, note, today(), found)), null);
    if (isThere(kit.id, lineId)) setSaid(kitsWords.contents.added(number, view.supply.name));
    else setTyped((next) => next || typed); // what was refused stays to be put right
  };
  return {
    ...{
      known,
      typed,
      setTyped: type,
      rows,
      box,
      view,
      inHand,
      number,
      lineId,
      note,
      setNote,
      said,
      field,
      pasted,
      takeList,
      add,
      price,
      currencies,
      keepsPrice,
      setKeepsPrice,
      setCurrency,
      saidKind,
      setSaidKind,
    },
    hold: setInHand,
    holdAt: (caret: number) => setInHand((view && pieceAt(view.pieces, caret)?.field) ?? null),
    putRight: (fix: Fix) => setFixes([...fixes.filter((other) => other.field !== fix.field), fix]),
    leaveList: () => {
      setPasted(null);
      clear();
      setTimeout(() => isFocusLost() && field.current?.focus(), 0); // the field comes back first
    },
  };
}

export type EntryState = ReturnType<typeof useEntry>;
