import { useMemo } from "react";
import { useBook } from "../../store/index.ts";
import { words } from "../words/index.ts";
import { type Act, actsElsewhere, goAndDo, useOfferedLists } from "./acts.ts";
import { redoLast, undoLast } from "./do-act.ts";
import { type Entry, entriesOf, placeEntries, wordEntries } from "./entries.ts";
import { setKeysOn, useKeysOn } from "./keys.ts";

const entryOf = ({ name, fact, also, run }: Act): Entry => ({
  key: `act ${name}`,
  kind: "act",
  ...{ name, fact, also, run },
});

/** What the other places can be asked for. */
const elsewhere = (here: readonly Act[]): readonly Act[] =>
  actsElsewhere
    .filter(({ name }) => here.every((act) => act.name !== name))
    .map(({ to, ...act }) => ({ ...act, run: () => goAndDo(to, act.name) }));

/** Everything that can be found just now. */
export function useEntries(): readonly Entry[] {
  const book = useBook((state) => state.book);
  const canUndo = useBook((state) => state.canUndo);
  const canRedo = useBook((state) => state.canRedo);
  const offered = useOfferedLists();
  const keysOn = useKeysOn();
  return useMemo(() => {
    const acts = [...offered.values()].flat();
    const keys: Entry = {
      key: "act keys",
      kind: "act",
      name: keysOn ? words.find.keysOff : words.find.keysOn,
      run: () => setKeysOn(!keysOn),
    };
    const undo: Entry = { key: "act undo", kind: "act", name: words.find.undo, run: () => void undoLast() };
    const redo: Entry = { key: "act redo", kind: "act", name: words.find.redo, run: () => void redoLast() };
    const back = [...(canUndo ? [undo] : []), ...(canRedo ? [redo] : [])];
    return [
      ...[...acts, ...elsewhere(acts)].map(entryOf),
      ...back,
      keys,
      ...placeEntries,
      ...entriesOf(book),
      ...wordEntries,
    ];
  }, [offered, keysOn, book, canUndo, canRedo]);
}
