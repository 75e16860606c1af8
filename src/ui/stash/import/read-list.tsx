import { useMemo } from "react";
import { Acts, Button } from "../../parts/index.ts";
import { importWords as words } from "../../words/import.ts";
import { format } from "../../words/index.ts";
import { Arrived, Busy } from "./busy.tsx";
import { PickList } from "./choose.tsx";
import { Controls } from "./controls.tsx";
import { FirstRows } from "./first-rows.tsx";
import styles from "./import.module.css";
import { NotAdded, ToLookAt } from "./looked-over.tsx";
import { type Bring, countsOf, headsOf, type Reading } from "./use-bring.ts";
import { rowView } from "./view/rows.ts";

type Props = Readonly<{ bring: Bring; reading: Reading }>;

/** A list as it is read: how, its first rows, what is doubtful, and what is added when told to. */
export function ReadList({ bring, reading }: Props) {
  const { name, mapping, summary, progress, remembered } = reading;
  const heads = headsOf(reading);
  const columns = mapping?.columns.length ?? 0;
  const rows = useMemo(
    () => (summary?.first ?? []).map((row) => rowView(row, heads, columns)),
    [summary, heads, columns],
  );
  return (
    <>
      <Arrived>{name}</Arrived>
      {!mapping && heads.length > 0 && <p className={styles.fact}>{words.savedHere}</p>}
      {remembered && <p className={styles.fact}>{words.remembered}</p>}
      <Controls bring={bring} reading={reading} />
      {summary && (
        <FirstRows
          mapping={mapping ?? { head: null, columns: [], currency: "", family: null }}
          heads={heads}
          rows={rows}
          onMapping={(next) => void bring.map(reading, next)}
        />
      )}
      {progress ? (
        <Busy text={words.reading(name)} progress={progress} onCancel={bring.cancel} />
      ) : (
        summary && <Verdict bring={bring} reading={reading} />
      )}
    </>
  );
}

function Verdict({ bring, reading }: Props) {
  const { summary, out } = reading;
  const { fresh, rest } = countsOf(reading);
  if (!summary) return null;
  const { doubtful, here, refused } = summary;
  return (
    <>
      <div role="status" className={styles.counts}>
        <p className={styles.count}>
          {words.counts(format.count(fresh), format.count(here), format.count(refused))}
        </p>
        <p className={styles.fact}>
          {[
            doubtful > 0 ? words.doubtful(format.count(doubtful), doubtful === 1) : "",
            out.size > 0 ? words.leftOut(format.count(out.size), out.size === 1) : "",
          ].join(" ")}
        </p>
      </div>
      <Acts>
        <Button kind="primary" notNow={fresh === 0 && words.nothing} onClick={() => void bring.add(reading)}>
          {words.add(format.count(fresh), fresh === 1)}
        </Button>
        {rest > 0 && (
          <Button onClick={() => void bring.saveRest(reading)}>
            {words.saveRest(format.count(rest), rest === 1)}
          </Button>
        )}
        <PickList bring={bring} label={words.pickAnother} kind="secondary" />
      </Acts>
      <ToLookAt bring={bring} reading={reading} />
      <NotAdded reading={reading} />
    </>
  );
}
