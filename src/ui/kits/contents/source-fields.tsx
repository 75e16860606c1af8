import { useMemo } from "react";
import { useBook } from "../../../store/index.ts";
import { Chooser, Select } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { knownSources, type SourceNote } from "../view/entry.ts";
import styles from "./entry.module.css";

type Props = Readonly<{
  kitId: string;
  note: SourceNote | null;
  onNote: (note: SourceNote | null) => void;
}>;

const sures = (["seen", "told", "believed"] as const).map((value) => ({
  value,
  label: kitsWords.contents.sure[value],
}));

/** Where lines are known from, and how surely; it stays for the next line. */
export function SourceFields({ kitId, note, onNote }: Props) {
  const book = useBook((state) => state.book);
  const options = useMemo(
    () => knownSources(book, kitId).map((value) => ({ value, label: value })),
    [book, kitId],
  );
  return (
    <div className={styles.source}>
      <Chooser
        label={kitsWords.entry.source}
        value={note?.source ?? null}
        options={options}
        takesNew
        onValue={(source) => onNote(source ? { source, sure: note?.sure ?? "seen" } : null)}
      />
      {note && (
        <Select
          label={kitsWords.entry.sure}
          value={note.sure}
          options={sures}
          onValue={(sure) => onNote({ ...note, sure })}
        />
      )}
    </div>
  );
}
