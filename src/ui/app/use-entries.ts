import { useMemo } from "react";
import { useBook } from "../../store/index.ts";
import { words } from "../words/index.ts";
import { useOfferedLists } from "./acts.ts";
import { redoLast, undoLast } from "./do-act.ts";
import { type Entry, entriesOf, placeEntries, wordEntries } from "./entries.ts";
import { setKeysOn, useKeysOn } from "./keys.ts";

/** Everything that can be found just now. */
export function useEntries(): readonly Entry[] {
  const book = useBook((state) => state.book);
  const canUndo = useBook((state) => state.canUndo);
  const canRedo = useBook((state) => state.canRedo);
  const offered = useOfferedLists();
  const keysOn = useKeysOn();
  return useMemo(() => {
    const acts = [...offered.values()]
      .flat()
      .map((act): Entry => ({ key: `act ${act.name}`, kind: "act", name: act.name, run: act.run }));
    const keys: Entry = {
      key: "act keys",
      kind: "act",
      name: keysOn ? words.find.keysOff : words.find.keysOn,
      run: () => setKeysOn(!keysOn),
    };
    const undo: Entry = { key: "act undo", kind: "act", name: words.find.undo, run: () => void undoLast() };
    const redo: Entry = { key: "act redo", kind: "act", name: words.find.redo, run: () => void redoLast() };
    const back = [...(canUndo ? [undo] : []), ...(canRedo ? [redo] : [])];
    return [...acts, ...back, keys, ...placeEntries, ...entriesOf(book), ...wordEntries];
  }, [offered, keysOn, book, canUndo, canRedo]);
}
