import { useEffect, useMemo, useRef, useState } from "react";
import { type KnownNames, readLines } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addLines, language, newId } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Acts, Button, Section } from "../../parts/index.ts";
import { Swatch } from "../../swatch/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { today } from "../today.ts";
import { lineOf, type SourceNote } from "../view/entry.ts";
import { pastedView } from "../view/pasted.ts";
import styles from "./entry.module.css";
import { SourceFields } from "./source-fields.tsx";

const words = kitsWords.entry;

type Props = Readonly<{
  kit: Kit;
  text: string;
  known: KnownNames;
  note: SourceNote | null;
  onNote: (note: SourceNote | null) => void;
  onDone: () => void;
}>;

/** A pasted list, line by line as it was understood, before any of it is added. */
export function Pasted({ kit, text, known, note, onNote, onDone }: Props) {
  const read = useMemo(() => pastedView(readLines(text, known, language)), [text, known]);
  const [out, setOut] = useState<ReadonlySet<number>>(new Set());
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const kept = read.filter(({ place }) => !out.has(place));
  const add = async () => {
    const ids = [...(kit.lines ?? [])].map(({ id }) => ({ id }));
    const lines = kept.map(({ reading }) => {
      const id = newId("l", ids);
      ids.push({ id });
      return lineOf(id, reading, note, today());
    });
    if (await doAct(addLines(kit, lines), words.allAdded(lines.length))) onDone();
  };
  return (
    <Band>
      <Section title={words.pasted(kept.length)}>
        <p className={styles.fact}>{words.pastedText}</p>
        <ol className={styles.pasted}>
          {kept.map((row) => (
            <li key={row.place} className={styles.pastedLine}>
              <Swatch
                item={{ id: `${kit.id}/pasted ${row.place}`, supply: row.reading.supply }}
                width={88}
                height={40}
              />
              <div>
                <p>
                  <strong>{row.reading.supply.name}</strong> <span>{row.facts}</span>
                </p>
                <p className={styles.fact}>
                  {words.written(row.text)} {row.kept}
                </p>
              </div>
              <Button
                kind="quiet"
                className={styles.small ?? ""}
                onClick={() => setOut(new Set([...out, row.place]))}
              >
                {words.takeOut}
                <span className="visually-hidden">{kitsWords.contents.about(row.reading.supply.name)}</span>
              </Button>
            </li>
          ))}
        </ol>
        <div className={styles.pastedSource}>
          <SourceFields kitId={kit.id} note={note} onNote={onNote} />
        </div>
        <Acts>
          <Button ref={first} kind="primary" notNow={kept.length > 0 ? null : words.notYet} onClick={add}>
            {words.addAll(kept.length)}
          </Button>
          <Button onClick={onDone}>{words.drop}</Button>
        </Acts>
      </Section>
    </Band>
  );
}
