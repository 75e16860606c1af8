import { useMemo, useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import type { Kit, Market } from "../../../engine/worth/index.ts";
import { addEvidence, newId, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { type PrecedentRow, precedentRows } from "../view/precedents.ts";
import styles from "./prices.module.css";

const text = kitsWords.prices;
const shownFirst = 4;

type Props = Readonly<{ kit: Kit; line: Line; market: Market }>;

/** What earlier kits' lines of the same kind cost, to be counted in with one press. */
export function Precedents({ kit, line, market }: Props) {
  const book = useBook((state) => state.book);
  const rows = useMemo(() => precedentRows(book, kit, line, market.id), [book, kit, line, market]);
  const [all, setAll] = useState(false);
  if (rows.length === 0) return null;
  const shown = all ? rows : rows.slice(0, shownFirst);
  const use = ({ reference }: PrecedentRow, button: Element) => {
    const id = newId("e", line.evidence);
    const date = kit.valuedOn ? { date: kit.valuedOn } : {};
    const evidence = { id, kind: "precedent" as const, line: reference, ...date };
    return thenToHeading(button, () => doAct(addEvidence(kit, line, evidence)));
  };
  return (
    <section aria-label={text.precedents}>
      <h3>{text.precedents}</h3>
      <p className={styles.fact}>{text.precedentsText}</p>
      <ul className={styles.found}>
        {shown.map((row) => (
          <li key={row.reference} className={styles.foundLine}>
            <strong>{row.price ? format.money(row.price) : text.waits}</strong>
            <span>{row.name}</span>
            <span className={styles.fact}>{[row.facts, row.kit].filter(Boolean).join(", ")}</span>
            {row.isIn ? (
              <span className={styles.fact}>{text.precedentIn}</span>
            ) : (
              <span className={styles.foundActs}>
                <Button kind="quiet" onClick={(event) => use(row, event.currentTarget)}>
                  {text.usePrecedent}
                  <span className="visually-hidden">{text.precedentName(row.name, row.kit)}</span>
                </Button>
              </span>
            )}
          </li>
        ))}
      </ul>
      {shown.length < rows.length && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {text.more(rows.length - shown.length)}
        </Button>
      )}
    </section>
  );
}
