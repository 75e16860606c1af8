import { useState } from "react";
import type { Erratum, Kit } from "../../../engine/worth/index.ts";
import { addErratum, editErratum, removeErratum } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Section } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import styles from "./contents.module.css";
import { ErratumForm } from "./erratum-form.tsx";

const text = kitLogWords.errata;

type Props = Readonly<{ kit: Kit }>;

/** What the maker put right after the kit was sent, and which lines that is about. */
export function Errata({ kit }: Props) {
  const errata = kit.errata ?? [];
  const [editing, setEditing] = useState<number | "new" | null>(null);
  const close = () => setEditing(null);
  const keep = async (erratum: Erratum) => {
    const act = typeof editing === "number" ? editErratum(kit, editing, erratum) : addErratum(kit, erratum);
    if (await doAct(act)) close();
  };
  return (
    <Section title={text.title}>
      {errata.length === 0 && editing === null && <p className={styles.fact}>{text.none}</p>}
      <ul className={styles.errata}>
        {errata.map((erratum, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: corrections have no name of their own, and keep no state
          <li key={index}>
            {editing === index ? (
              <ErratumForm kit={kit} erratum={erratum} onKeep={keep} onClose={close} />
            ) : (
              <Correction kit={kit} erratum={erratum} index={index} onChange={() => setEditing(index)} />
            )}
          </li>
        ))}
      </ul>
      {editing === "new" ? (
        <ErratumForm kit={kit} erratum={null} onKeep={keep} onClose={close} />
      ) : (
        <div className="screen-only">
          <Button kind="quiet" onClick={() => setEditing("new")}>
            {text.add}
          </Button>
        </div>
      )}
    </Section>
  );
}

/** "2 and 4, Gouache, moss": the lines that a correction is about. */
function aboutText(kit: Kit, { lines }: Erratum): string {
  const about = new Set(lines ?? []);
  const names = (kit.lines ?? []).flatMap(({ id, supply }, index) =>
    about.has(id) ? [`${index + 1} ${supply.name}`] : [],
  );
  return names.length > 0 ? text.about(kitsWords.joined(names)) : text.whole;
}

type CorrectionProps = Props & Readonly<{ erratum: Erratum; index: number; onChange: () => void }>;

function Correction({ kit, erratum, index, onChange }: CorrectionProps) {
  const { date, text: says } = erratum;
  const name = <span className="visually-hidden">{kitsWords.contents.about(says ?? "")}</span>;
  return (
    <>
      <p>{says}</p>
      <p className={styles.fact}>
        {[date ? format.date(date) : kitsWords.prices.undated, aboutText(kit, erratum)].join(" · ")}
      </p>
      <p className="screen-only">
        <Button kind="quiet" className={styles.change ?? ""} onClick={onChange}>
          {text.change}
          {name}
        </Button>{" "}
        <Button
          kind="quiet"
          className={styles.change ?? ""}
          onClick={(event) => void thenToHeading(event.currentTarget, () => doAct(removeErratum(kit, index)))}
        >
          {text.remove}
          {name}
        </Button>
      </p>
    </>
  );
}
