import { useMemo, useRef, useState } from "react";
import { readLines } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addLine, language, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { isFocusLost } from "../../parts/use-focus.ts";
import { kitsWords } from "../../words/kits.ts";
import { today } from "../today.ts";
import { entryView, type Fix, knownNames, lineOf, pieceAt, type SourceNote } from "../view/entry.ts";

const isThere = (kitId: string, lineId: string): boolean => {
  const kit = useBook.getState().book.kits?.find(({ id }) => id === kitId);
  return (kit?.lines ?? []).some(({ id }) => id === lineId);
};

/** The line being written: its text, how it was understood, what was put right of it, and the piece in hand. */
export function useEntry(kit: Kit) {
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
  /** Takes a text of several lines to be looked over; false where it is one line only. */
  const takeList = (list: string): boolean => {
    if (readLines(list, known, language).length < 2) return false;
    setPasted(list);
    return true;
  };
  const add = async () => {
    if (!view || takeList(typed)) return;
    clear();
    field.current?.focus();
    await doAct(addLine(kit, lineOf(lineId, view, note, today())), null);
    if (isThere(kit.id, lineId)) setSaid(kitsWords.contents.added(number, view.supply.name));
    else setTyped((next) => next || typed); // what was refused stays to be put right
  };
  return {
    ...{
      known,
      typed,
      setTyped,
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
