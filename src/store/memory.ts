import { emptyWorkbook, type Workbook } from "../engine/workbook/index.ts";
import { recordsIn } from "./count.ts";
import { stored } from "./faults.ts";
import type { Act, ActHead, Picture } from "./journal/index.ts";
import { unmentioned } from "./photos.ts";
import { prepare } from "./prepare.ts";
import { type BookRepository, type Draft, type Needed, type Snapshot, snapshotsKept } from "./repository.ts";

type Kept = Readonly<{ snapshot: Snapshot; book: Workbook }>;

/** What several tabs would share, were this a browser's storage. */
type Disk = {
  book: Workbook;
  acts: readonly Act[];
  kept: readonly Kept[];
  readonly pictures: Map<string, Picture>;
  readonly device: string;
};

export const memoryDisk = (device: string): Disk => ({
  book: emptyWorkbook(),
  acts: [],
  kept: [],
  pictures: new Map(),
  device,
});

const headOf = ({ changes: _, inverse: __, ...head }: Act): ActHead => head;

function keep(disk: Disk, { at, label }: Draft): void {
  const id = (disk.kept.at(-1)?.snapshot.id ?? 0) + 1;
  const snapshot = { id, at, label, records: recordsIn(disk.book) };
  disk.kept = [...disk.kept, { snapshot, book: disk.book }].slice(-snapshotsKept);
}

function sweep(disk: Disk, need: Needed): number {
  const acts = disk.acts.filter(({ id, at }) => at >= need.since || need.acts.has(id));
  const mentioned = [disk.book.photos, disk.kept.map(({ book }) => book.photos), acts];
  const gone = unmentioned([...disk.pictures.keys()], mentioned);
  for (const sum of gone) disk.pictures.delete(sum);
  return gone.length;
}

/** Keeps the book for as long as the tab is open: for tests, and where the browser keeps nothing. */
export function memoryRepository(disk: Disk): BookRepository {
  const seen = { revision: 0 };

  function opened() {
    seen.revision = disk.acts.length;
    return {
      book: disk.book,
      revision: seen.revision,
      savedAt: disk.acts.at(-1)?.at ?? null,
      readOnly: null,
    };
  }

  function commit(draft: Draft) {
    const revision = disk.acts.length;
    const prepared = prepare(disk.book, draft, { device: disk.device, counter: revision, revision });
    if (!prepared.ok) return prepared;
    if (draft.snapshot) keep(disk, draft);
    for (const picture of draft.pictures ?? []) disk.pictures.set(picture.sha256, picture);
    disk.book = prepared.value.book;
    disk.acts = [...disk.acts, prepared.value.act];
    const rebased = seen.revision !== revision;
    seen.revision = revision + 1;
    return stored({ ...prepared.value, revision: revision + 1, rebased });
  }

  return {
    lasting: false,
    load: async () => stored(opened()),
    commit: async (draft) => commit(draft),
    acts: async (skip, limit) =>
      stored(
        disk.acts
          .toReversed()
          .slice(skip, skip + limit)
          .map(headOf),
      ),
    act: async (id) => stored(disk.acts.find((act) => act.id === id) ?? null),
    snapshots: async () => stored(disk.kept.map(({ snapshot }) => snapshot).toReversed()),
    snapshot: async (id) => stored(disk.kept.find(({ snapshot }) => snapshot.id === id)?.book ?? null),
    picture: async (sha256) => stored(disk.pictures.get(sha256) ?? null),
    sweep: async (need) => stored(sweep(disk, need)),
    whenLost: () => {}, // memory goes only with the tab
    close: () => {},
  };
}
