import { useState } from "react";
import { currencyCodes } from "../../engine/money/index.ts";
import { useBook } from "../../store/index.ts";
import { Chooser, Fault, FilePick } from "../parts/index.ts";
import { faultIn } from "../words/faults.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";
import { RatePreview } from "./rate-preview.tsx";
import { type RateFileRead, rateText, readRateFile } from "./view/rate-file.ts";
import { usualBase } from "./view/rates.ts";

const words = marketsWords.file;

type Chosen = Readonly<{ name: string; text: string | null; refused: RateFileRead | null }>;

/** Rates from a central bank's file: read, shown, and kept only when told to. */
export function RateFile() {
  const book = useBook((state) => state.book);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [base, setBase] = useState(usualBase(book));
  const take = async ([file]: readonly File[]) => {
    if (!file) return;
    const decoded = rateText(await file.arrayBuffer());
    const isText = "text" in decoded;
    setChosen({ name: file.name, text: isText ? decoded.text : null, refused: isText ? null : decoded });
  };
  const read = chosen && (chosen.refused ?? readRateFile(chosen.text ?? "", base, chosen.name));
  return (
    <div className={styles.file}>
      <h3>{words.title}</h3>
      <p className={styles.text}>{words.text}</p>
      <div className={styles.pick}>
        <FilePick
          label={words.pick}
          accept=".csv,text/csv,text/plain"
          onFiles={(files) => void take(files)}
        />
        <div className={styles.base}>
          <Chooser
            label={words.base}
            value={base}
            options={currencyCodes.map((value) => ({ value, label: value }))}
            onValue={(code) => code !== null && setBase(code)}
          />
        </div>
      </div>
      {chosen && read && (
        <Read key={chosen.name} name={chosen.name} read={read} onClose={() => setChosen(null)} />
      )}
    </div>
  );
}

type ReadProps = Readonly<{ name: string; read: RateFileRead; onClose: () => void }>;

const Read = ({ name, read, onClose }: ReadProps) =>
  read.ok ? (
    <RatePreview name={name} tables={read.tables} onClose={onClose} />
  ) : (
    <Refused name={name} faults={read.faults} />
  );

type RefusedProps = Readonly<{ name: string; faults: Extract<RateFileRead, { ok: false }>["faults"] }>;

function Refused({ name, faults }: RefusedProps) {
  return (
    <div className={styles.refused}>
      <Fault title={words.refused(name)} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className={styles.scrolls} tabIndex={0} aria-label={words.faults}>
        <ol>
          {faults.map(faultIn).map(({ place, problem, remedy }) => (
            <li key={`${place} ${problem}`}>
              <strong>{place}</strong>: {words.fault(problem, remedy)}
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}
