import { type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import { type KnownNames, readLines } from "../../engine/supply/index.ts";
import { language } from "../../store/index.ts";
import { Band } from "../kits/band.tsx";
import entry from "../kits/contents/entry.module.css";
import { pastedView } from "../kits/view/pasted-view.ts";
import { Acts, Button } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { stashWords } from "../words/stash.ts";
import styles from "./add.module.css";
import type { Written } from "./view/new-items.ts";

const words = stashWords.adding;

type Props = Readonly<{
  text: string;
  known: KnownNames;
  /** The field that says where these live. */
  where: ReactNode;
  onAdd: (written: readonly Written[]) => void;
  onDrop: () => void;
}>;

/** A pasted list, thing by thing as it was understood, before any of it is added. */
export function PastedList({ text, known, where, onAdd, onDrop }: Props) {
  const read = useMemo(() => pastedView(readLines(text, known, language)), [text, known]);
  const [out, setOut] = useState<ReadonlySet<number>>(new Set());
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const kept = read.filter(({ place }) => !out.has(place));
  return (
    <Band>
      <h2>{words.pasted(kept.length)}</h2>
      <p className={entry.fact}>{words.pastedText}</p>
      <ol className={entry.pasted}>
        {kept.map((row) => (
          <li key={row.place} className={entry.pastedLine}>
            <Swatch item={{ id: `pasted ${row.place}`, supply: row.reading.supply }} width={88} height={40} />
            <div>
              <p>
                <strong>{row.reading.supply.name}</strong> {row.facts}
              </p>
              <p className={entry.fact}>
                “{row.text}” {row.kept}
              </p>
            </div>
            <Button
              kind="quiet"
              aria-label={words.takeOutNamed(row.reading.supply.name)}
              onClick={() => setOut(new Set([...out, row.place]))}
            >
              {words.takeOut}
            </Button>
          </li>
        ))}
      </ol>
      <div className={styles.where}>{where}</div>
      <Acts>
        <Button
          ref={first}
          kind="primary"
          notNow={kept.length > 0 ? null : words.notYet}
          onClick={() => onAdd(kept.map(({ reading }) => reading))}
        >
          {words.addAll(kept.length)}
        </Button>
        <Button onClick={onDrop}>{words.drop}</Button>
      </Acts>
    </Band>
  );
}
