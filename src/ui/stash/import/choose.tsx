import { useState } from "react";
import { Button, Field, FilePick } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import styles from "./import.module.css";
import type { Bring } from "./use-bring.ts";

/** What is read; the type is told by what is in the file, so this only sorts the files shown. */
const accept = ".csv,.tsv,.txt,.xlsx,.ods,.json,text/csv,text/tab-separated-values,text/plain";

type Props = Readonly<{ bring: Bring; label: string; kind?: "primary" | "secondary" }>;

/** The one way to choose the file. */
export function PickList({ bring, label, kind = "primary" }: Props) {
  return (
    <FilePick
      label={label}
      accept={accept}
      kind={kind}
      onFiles={([file]) => file && void bring.takeFile(file)}
    />
  );
}

/** A file to choose, or a list to paste. */
export function Choose({ bring, cancelled }: Readonly<{ bring: Bring; cancelled: string | null }>) {
  const [text, setText] = useState("");
  return (
    <div className={styles.choose}>
      <p role="status">{cancelled === null ? "" : words.cancelled(cancelled)}</p>
      <div>
        <PickList bring={bring} label={words.pick} />
        <p className={styles.fact}>{words.kinds}</p>
      </div>
      <Field label={words.paste} hint={words.pasteHint} lines={5} value={text} onValue={setText} />
      <div>
        <Button notNow={text.trim() === "" && words.readNotYet} onClick={() => void bring.takeText(text)}>
          {words.read}
        </Button>
      </div>
    </div>
  );
}
