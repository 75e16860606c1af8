import { useState } from "react";
import type { Mapping } from "../../../engine/intake/index.ts";
import { caps } from "../../../engine/intake/index.ts";
import {
  bringInItems,
  keepReading,
  keptReading,
  language,
  newId,
  performLarge,
  useBook,
} from "../../../store/index.ts";
import {
  type Delimiter,
  type FileFault,
  type Guess,
  type Opened,
  type Summary,
  startReader,
  type TableReader,
} from "../../../workers/index.ts";
import { saveFile } from "../../app/save-file.ts";
import { today } from "../../kits/today.ts";
import { knownNames } from "../../kits/view/entry.ts";
import { importWords as words } from "../../words/import.ts";
import { useThread } from "../use-thread.ts";
import { homeCurrency } from "../view/options.ts";

type File = Readonly<{ name: string; size: number; arrayBuffer: () => Promise<ArrayBuffer> }>;
type Book = Extract<Opened, { ok: true }>;

/** What a list is read as at the moment. */
export type Reading = Readonly<{
  at: "reading";
  name: string;
  opened: Book;
  sheet: number;
  guess: Guess | null;
  mapping: Mapping | null;
  remembered: boolean;
  /** What it came to; null until it has been read once. */
  summary: Summary | null;
  /** How far the reading is; null when it is done. */
  progress: Readonly<{ done: number; all: number }> | null;
  /** Rows that the person takes out. */
  out: ReadonlySet<number>;
}>;

export type Phase =
  | Readonly<{ at: "choosing"; cancelled: string | null }>
  | Readonly<{ at: "opening"; name: string }>
  | Readonly<{ at: "refused"; name: string; fault: FileFault }>
  | Reading
  | Readonly<{ at: "adding"; count: number }>
  | Readonly<{ at: "done"; count: number; first: string; rest: string | null; restCount: number }>;

const nothingYet: Phase = { at: "choosing", cancelled: null };

const noHeads: readonly string[] = [];

/** The heads of what is read; a list that was saved here says its own. */
export const headsOf = ({ guess, opened, sheet }: Reading): readonly string[] =>
  guess?.heads ?? opened.sheets[sheet]?.saved ?? noHeads;

/** How many rows of a reading are added, and how many not. */
export const countsOf = ({ summary, out }: Reading) => ({
  fresh: (summary?.fresh ?? 0) - out.size,
  rest: (summary?.here ?? 0) + (summary?.refused ?? 0) + out.size,
});

/** Fresh ids, each looked up among those taken in the time of one look. */
function idsFor(count: number): readonly string[] {
  const taken = new Set((useBook.getState().book.stash ?? []).map(({ id }) => id));
  return Array.from({ length: count }, () => {
    let id = newId("st-", null);
    while (taken.has(id)) id = newId("st-", null);
    taken.add(id);
    return id;
  });
}

/** The engine's view of what is there already. */
function around() {
  const { book } = useBook.getState();
  const kits = (book.kits ?? []).map(({ id }) => id);
  return { stash: book.stash ?? [], kits, known: knownNames(book), today: today(), language };
}

/** A list on its way into the stash: chosen, read, looked over, and added or not. */
export function useBring() {
  const [phase, setPhase] = useState<Phase>(nothingYet);
  const { held: reader, turn, next, stop } = useThread<TableReader>();

  function ready(name: string): TableReader {
    if (reader.current) return reader.current;
    const started = startReader();
    started.whenLost(() => {
      if (reader.current !== started) return;
      stop();
      setPhase({ at: "refused", name, fault: "too-much" });
    });
    reader.current = started;
    return started;
  }

  async function readAll(reading: Reading): Promise<void> {
    const mine = next();
    const { ask, heard } = ready(reading.name);
    setPhase({ ...reading, progress: { done: 0, all: reading.opened.sheets[reading.sheet]?.rows ?? 0 } });
    const onProgress = heard((done, all) => {
      if (turn.current !== mine) return;
      setPhase((now) => (now.at === "reading" ? { ...now, progress: { done, all } } : now));
    });
    const summary = reading.mapping
      ? await ask.readRows(reading.mapping, around(), onProgress)
      : await ask.readItems(around());
    if (turn.current !== mine || summary === null) return;
    setPhase({ ...reading, summary, progress: null, out: new Set() });
  }

  /** Reads a sheet as it is guessed, or as such a list was read last. */
  async function readSheet(reading: Reading, head?: number | null): Promise<void> {
    const mine = next();
    const home = homeCurrency(useBook.getState().book);
    const guess = await ready(reading.name).ask.guess(reading.sheet, home, language, head);
    if (turn.current !== mine) return;
    if (guess === null) return readAll({ ...reading, guess: null, mapping: null });
    const kept = guess.mapping.head === null ? null : keptReading(guess.print);
    const fits = kept !== null && kept.columns.length === guess.mapping.columns.length;
    const mapping = fits ? { ...guess.mapping, ...kept } : guess.mapping;
    return readAll({ ...reading, guess, mapping, remembered: fits });
  }

  async function open(name: string, work: (reader: TableReader) => Promise<Opened>): Promise<void> {
    const mine = next();
    setPhase({ at: "opening", name });
    const opened = await work(ready(name));
    if (turn.current !== mine) return;
    if (!opened.ok) return setPhase({ at: "refused", name, fault: opened.fault });
    await readSheet({
      at: "reading",
      name,
      opened,
      sheet: 0,
      guess: null,
      mapping: null,
      remembered: false,
      summary: null,
      progress: null,
      out: new Set(),
    });
  }

  async function takeFile(file: File): Promise<void> {
    if (file.size > caps.bytes) return setPhase({ at: "refused", name: file.name, fault: "too-large" });
    await open(file.name, async ({ openFile }) => {
      const bytes = await file.arrayBuffer().catch(() => null);
      return bytes === null ? { ok: false, fault: "unreadable" } : openFile(bytes, file.name);
    });
  }

  const takeText = (text: string): Promise<void> =>
    open(words.pastedName, ({ ask }) => ask.openText(text, words.pastedName));

  async function partBy(reading: Reading, delimiter: Delimiter): Promise<void> {
    await open(reading.name, ({ ask }) => ask.partBy(delimiter));
  }

  function cancel(): void {
    const name = phase.at === "opening" || phase.at === "reading" ? phase.name : null;
    stop();
    setPhase({ at: "choosing", cancelled: name });
  }

  async function restOf({ out }: Reading): Promise<string> {
    return ready("").ask.rest([...out], { reason: words.restReason, leftOut: words.restLeftOut });
  }

  async function add(reading: Reading): Promise<void> {
    const { fresh: count, rest: restCount } = countsOf(reading);
    setPhase({ at: "adding", count });
    const { ask } = ready(reading.name);
    const [drafts, rest] = await Promise.all([ask.drafts([...reading.out]), restOf(reading)]);
    const ids = idsFor(drafts.length);
    const items = drafts.map((draft, at) => ({ id: ids[at] ?? "", ...draft }));
    const kept = await performLarge(bringInItems(items, reading.name.slice(0, 80)));
    if (!kept.ok) return setPhase(reading); // the frame says what stood in the way
    if (reading.guess && reading.mapping) keepReading(reading.guess.print, reading.mapping);
    stop();
    setPhase({ at: "done", count, first: ids[0] ?? "", rest: restCount > 0 ? rest : null, restCount });
  }

  return {
    phase,
    takeFile,
    takeText,
    partBy,
    cancel,
    add,
    chooseSheet: (reading: Reading, sheet: number) => readSheet({ ...reading, sheet }),
    chooseHead: (reading: Reading, head: number | null) => readSheet(reading, head),
    map: (reading: Reading, mapping: Mapping) => readAll({ ...reading, mapping }),
    leaveOut: (reading: Reading, out: ReadonlySet<number>) => setPhase({ ...reading, out }),
    saveRest: async (reading: Reading) => saveFile(words.restName, await restOf(reading), "text/csv"),
    startAgain: () => setPhase(nothingYet),
  };
}

export type Bring = ReturnType<typeof useBring>;
