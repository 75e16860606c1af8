import { useRef, useState } from "react";
import { Button, classes, Field } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { remakeWords } from "../../words/remakes.ts";
import styles from "../entries.module.css";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import { isSecure } from "../view/tags.ts";

const words = remakeWords.writeUp;

type Link = { text?: string | null | undefined; url?: string | null | undefined };
type Props = Readonly<{ links: readonly Link[]; onKeep: (links: readonly Link[]) => void }>;

const readUrl = (url: string) =>
  isSecure(url) ? ({ ok: true, value: url.trim() } as const) : ({ ok: false, fault: words.badUrl } as const);

/** Links of the description, each with what it leads to. */
export function Links({ links, onKeep }: Props) {
  return (
    <div>
      <h3>{words.links}</h3>
      <ul className={styles.list}>
        {keyed(links).map(({ key, index, entry }) => (
          <li key={key} className={classes(styles.entry, styles.paired)}>
            <KeptField
              label={words.linkText}
              value={entry.text ?? ""}
              read={readText}
              onKeep={(text) => onKeep(changedAt(links, index, { text: text ?? null }))}
            />
            <KeptField
              label={words.linkUrl}
              value={entry.url ?? ""}
              read={readUrl}
              onKeep={(url) => onKeep(changedAt(links, index, { url: url ?? null }))}
            />
            <Button
              kind="quiet"
              aria-label={remakeWords.removeNamed(entry.text || entry.url || words.links)}
              onClick={() => onKeep(withoutAt(links, index))}
            >
              {remakeWords.remove}
            </Button>
          </li>
        ))}
      </ul>
      <AddLink onAdd={(link) => onKeep([...links, link])} />
    </div>
  );
}

function AddLink({ onAdd }: Readonly<{ onAdd: (link: Link) => void }>) {
  const [text, setText] = useState("");
  const [url, setUrl] = useState("");
  const [isBad, setBad] = useState(false);
  const first = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const add = () => {
    setBad(!isSecure(url));
    if (!isSecure(url)) return;
    onAdd({ text: text.trim() || null, url: url.trim() });
    setText("");
    setUrl("");
    first.current?.focus();
  };
  return (
    <div className={classes(styles.add, styles.paired)}>
      <Field label={words.linkText} value={text} onValue={setText} onEnter={add} inputRef={first} />
      <Field
        label={words.linkUrl}
        hint={words.linkUrlHint}
        kind="url"
        value={url}
        onValue={setUrl}
        onEnter={add}
        fault={isBad && !isSecure(url) && words.badUrl}
      />
      <Button onClick={add}>{words.addLink}</Button>
    </div>
  );
}
