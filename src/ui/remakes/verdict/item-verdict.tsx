import { useMemo } from "react";
import type { Remake } from "../../../engine/workbook/index.ts";
import { setVerdict } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Beside, Choice, Select } from "../../parts/index.ts";
import { KeptField, readText } from "../../supply-form/kept-field.tsx";
import { Swatch } from "../../swatch/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import type { LineVerdict, VerdictRow } from "../view/verdict.ts";
import styles from "./verdict.module.css";

const words = remakeWords.verdict;

const notSaid = "";
const uses = [
  { value: notSaid, label: words.notSaid },
  ...words.uses.map((label, value) => ({ value: String(value), label })),
];

/** What a person makes of one item: would I use it, would I buy it, what it would replace, a few words. */
export function ItemVerdict({ row, remake }: Readonly<{ row: VerdictRow; remake: Remake }>) {
  const { line, verdict } = row;
  const item = useMemo(() => ({ id: line.id, supply: line.supply }), [line]);
  const keep = (patch: Partial<LineVerdict>) =>
    void doAct(setVerdict(remake, line, { ...verdict, ...patch }), null);
  return (
    <li className={styles.item}>
      <Beside className={styles.row} aside={<p className={styles.number}>{row.number}</p>}>
        <div className={styles.head}>
          <Swatch item={item} width={72} height={40} />
          <div>
            <h3>{line.supply.name}</h3>
            <p className={styles.fact}>{row.stoodIn}</p>
          </div>
        </div>
        <div className={styles.said}>
          <Select
            label={words.use}
            value={String(verdict.use ?? notSaid)}
            options={uses}
            onValue={(use) => keep({ use: use === notSaid ? null : Number(use) })}
          />
          <Choice<"yes" | "no">
            label={words.buy}
            value={verdict.buy === true ? "yes" : verdict.buy === false ? "no" : null}
            options={[
              { value: "yes", label: words.yes },
              { value: "no", label: words.no },
            ]}
            onValue={(buy) => keep({ buy: buy === "yes" })}
          />
          <KeptField
            label={words.replaces}
            wraps
            value={verdict.replaces ?? ""}
            read={readText}
            onKeep={(replaces) => keep({ replaces: replaces ?? null })}
          />
          <KeptField
            label={words.text}
            wraps
            value={verdict.text ?? ""}
            read={readText}
            onKeep={(text) => keep({ text: text ?? null })}
          />
        </div>
      </Beside>
    </li>
  );
}
