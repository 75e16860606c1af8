import { useState } from "react";
import { sizeLimitBytes } from "../../engine/workbook/index.ts";
import { type Restorable, replaceBook, restorable } from "../../store/index.ts";
import { undoLast } from "../app/do-act.ts";
import { Button, Dialog, FilePick, notify } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";
import { format } from "../words/index.ts";

const words = deskWords.restore;

type Props = Readonly<{ label: string; kind?: "primary" | "secondary" }>;

/** A file that is too large is not even read into memory. */
const readFile = async (file: File): Promise<Restorable> =>
  restorable(file.size > sizeLimitBytes ? "" : await file.text(), file.size);

async function putIn(read: Extract<Restorable, { ok: true }>): Promise<void> {
  const done = await replaceBook(read.book, words.label);
  if (done.ok) notify(words.done(read.records), () => void undoLast());
  else notify(`${done.fault.problem} ${done.fault.remedy}`);
}

/** Picks a copy, shows what it holds, and puts it in only when told to. */
export function Restore({ label, kind = "secondary" }: Props) {
  const [read, setRead] = useState<Restorable | null>(null);
  const close = () => setRead(null);
  const take = async (files: readonly File[]) => {
    const [file] = files;
    if (file) setRead(await readFile(file));
  };
  return (
    <>
      <FilePick
        label={label}
        accept=".json,application/json"
        kind={kind}
        onFiles={(files) => void take(files)}
      />
      <Dialog
        open={read !== null}
        title={read?.ok ? words.title : words.refused}
        onClose={close}
        acts={
          read?.ok ? (
            <>
              <Button
                kind="primary"
                onClick={() => {
                  close();
                  void putIn(read);
                }}
              >
                {words.verb}
              </Button>
              <Button onClick={close}>{words.cancel}</Button>
            </>
          ) : (
            <Button onClick={close}>{words.close}</Button>
          )
        }
      >
        {read?.ok ? <Holds read={read} /> : read && <Refused faults={read.faults} />}
      </Dialog>
    </>
  );
}

function Holds({ read }: Readonly<{ read: Extract<Restorable, { ok: true }> }>) {
  const { stash, kits, remakes } = read.book;
  return (
    <>
      <p>{words.holds(stash?.length ?? 0, kits?.length ?? 0, remakes?.length ?? 0)}</p>
      {read.writtenAt && <p>{words.written(format.date(read.writtenAt.slice(0, 10)))}</p>}
      {read.damaged && <p>{words.damaged}</p>}
    </>
  );
}

const faultsShown = 5;

function Refused({ faults }: Pick<Extract<Restorable, { ok: false }>, "faults">) {
  return (
    <>
      <p>{words.refusedSafe}</p>
      <ul>
        {faults.slice(0, faultsShown).map(({ place, problem, remedy }) => (
          <li key={`${place} ${problem}`}>
            {place}: {problem}; {remedy}.
          </li>
        ))}
      </ul>
      {faults.length > faultsShown && <p>{words.more(faults.length - faultsShown)}</p>}
    </>
  );
}
