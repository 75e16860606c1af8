import { useCallback, useEffect, useRef, useState } from "react";
import type { NotHeld } from "../../../engine/intake/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { language } from "../../../store/index.ts";
import { type ListKind, startReader, type TableReader } from "../../../workers/index.ts";
import { saveFile } from "../../app/save-file.ts";
import { today } from "../../kits/today.ts";
import { format } from "../../words/index.ts";
import { saveWords as words } from "../../words/save.ts";

/** How saving stands: what it says, and whether it is still at it. */
export type Saving = Readonly<{ says: string; busy: boolean }>;

const idle: Saving = { says: "", busy: false };

const types: Readonly<Record<ListKind, string>> = {
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ods: "application/vnd.oasis.opendocument.spreadsheet",
  csv: "text/csv;charset=utf-8",
};

/** Writes lists in a thread of its own, which ends with the page. */
export function useListFile() {
  const [saving, setSaving] = useState<Saving>(idle);
  const reader = useRef<TableReader | null>(null);
  useEffect(
    () => () => {
      reader.current?.stop();
      reader.current = null;
    },
    [],
  );

  const ready = useCallback((): TableReader => {
    if (reader.current) return reader.current;
    const started = startReader();
    started.whenLost(() => {
      started.stop();
      reader.current = null;
      setSaving({ says: words.failed, busy: false });
    });
    reader.current = started;
    return started;
  }, []);

  const save = useCallback(
    async (kind: ListKind, items: readonly StashItem[]): Promise<void> => {
      setSaving({ says: words.writing, busy: true });
      try {
        const bytes = await ready().ask.listFile(kind, items, language, words.sheet);
        const name = words.fileName(today(), kind);
        saveFile(name, new Blob([bytes], { type: types[kind] }));
        const says = words.saved(name, format.count(items.length), items.length === 1);
        setSaving({ says, busy: false });
      } catch {
        setSaving({ says: words.failed, busy: false }); // all that writing can want for is memory
      }
    },
    [ready],
  );

  /** What of these things a list does not hold. */
  const lookAt = useCallback(
    (items: readonly StashItem[]): Promise<NotHeld> => ready().ask.notHeld(items, language),
    [ready],
  );

  return { saving, save, lookAt };
}

export type ListFile = ReturnType<typeof useListFile>;
