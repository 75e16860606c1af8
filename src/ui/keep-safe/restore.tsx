import { useState } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { Button, type Column, Dialog, FilePick, Section, Table } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { keepSafeWords } from "../words/keep-safe.ts";
import styles from "./keep-safe.module.css";
import { Refused } from "./refused.tsx";
import { replaceWith } from "./replace.ts";
import { dayOf } from "./view/moment.ts";
import { type CountRow, type Preview, previewOf } from "./view/preview.ts";
import { type CopyIn, type CopyPhotos, readCopy } from "./view/read-copy.ts";

const words = keepSafeWords.restore;

type Chosen = Readonly<{ name: string; read: CopyIn }>;

const place = "restore";

const offered = [
  {
    name: actWords.restore,
    also: actWords.restoreAlso,
    run: () => document.querySelector<HTMLElement>(`#${place} input`)?.focus(),
  },
];

/** A copy brought back, on the page where copies are kept. */
export function Restore() {
  useOffer(offered);
  return (
    <Section title={words.title} id={place}>
      <p className={styles.text}>{words.text}</p>
      <RestorePick label={words.pick} />
    </Section>
  );
}

type PickProps = Readonly<{ label: string; kind?: "primary" | "secondary" }>;

/** Picks a copy, checks it whole, shows what it would change, and puts it in only on yes. */
export function RestorePick({ label, kind = "secondary" }: PickProps) {
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const take = async ([file]: readonly File[]) => {
    if (file) setChosen({ name: file.name, read: await readCopy(file) });
  };
  return (
    <>
      <FilePick
        label={chosen && !chosen.read.ok ? words.another : label}
        accept=".json,.zip,application/json,application/zip"
        kind={kind}
        onFiles={(files) => void take(files)}
      />
      {chosen && !chosen.read.ok && <Refused name={chosen.name} faults={chosen.read.faults} />}
      <Ask chosen={chosen} onClose={() => setChosen(null)} />
    </>
  );
}

function Ask({ chosen, onClose }: Readonly<{ chosen: Chosen | null; onClose: () => void }>) {
  const here = useBook((state) => state.book);
  const read = chosen?.read.ok ? chosen.read : null;
  const preview = read && previewOf(here, read, dayOf(new Date().toISOString()));
  const restore = () => {
    onClose();
    if (chosen && read) {
      const { book, records, photos } = read;
      void replaceWith(book, words.label(chosen.name), words.done(records), photos.pictures);
    }
  };
  return (
    <Dialog
      open={preview !== null}
      wide
      title={words.dialog(preview?.when ?? null)}
      onClose={onClose}
      acts={
        <>
          <Button kind="primary" onClick={restore}>
            {words.act}
          </Button>
          <Button onClick={onClose}>{words.keep}</Button>
        </>
      }
    >
      {preview && <Would preview={preview} />}
      {read && <OfPhotos photos={read.photos} />}
    </Dialog>
  );
}

/** What a person must know of a copy's photos before it is restored. */
function OfPhotos({ photos: { leftOut, missing } }: Readonly<{ photos: CopyPhotos }>) {
  return (
    <>
      {leftOut > 0 && <p>{words.leftOut(leftOut)}</p>}
      {missing > 0 && <p>{words.missing(missing)}</p>}
    </>
  );
}

const counts = keepSafeWords.counts;

const columns: readonly Column<CountRow>[] = [
  { key: "what", head: counts.what, names: true, cell: (row) => row.what },
  { key: "here", head: counts.here, align: "end", cell: (row) => row.here },
  { key: "there", head: counts.there, align: "end", cell: (row) => row.there },
];

function Would({ preview }: Readonly<{ preview: Preview }>) {
  return (
    <>
      <p>{words.instead}</p>
      {preview.damaged && <p className={styles.damaged}>{words.damaged}</p>}
      <Table caption={counts.caption} columns={columns} rows={preview.rows} keyOf={(row) => row.key} />
      {preview.odd.length > 0 && (
        <div>
          <p>{words.odd(preview.odd.length)}</p>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
          <ul className={styles.scrolls} tabIndex={0}>
            {preview.odd.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
