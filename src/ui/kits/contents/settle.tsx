import { useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { decide, leaveOpen } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Choice, Field } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { today } from "../today.ts";
import { claimField, sourceOf } from "../view/claims.ts";
import { type Conflict, conflictsOf, decidedFor, pathOf, type Saying, valueText } from "../view/conflicts.ts";
import styles from "./contents.module.css";

const text = kitLogWords.settle;

type Props = Readonly<{ kit: Kit; line: Line }>;

/** The fields of a line of which sources say different things, each to be settled with a reason. */
export function Settle({ kit, line }: Props) {
  const conflicts = conflictsOf(line);
  if (conflicts.length === 0) return null;
  return (
    <section aria-label={text.title}>
      <h3>{text.title}</h3>
      <p className={styles.fact}>{text.text}</p>
      {conflicts.map((conflict) =>
        conflict.decided ? (
          <Settled key={conflict.field} {...{ kit, line, conflict }} />
        ) : (
          <Open key={conflict.field} {...{ kit, line, conflict }} />
        ),
      )}
    </section>
  );
}

type ConflictProps = Props & Readonly<{ conflict: Conflict }>;

/** "photo of the card, seen; a post, told; stands in the line". */
function sayersText({ claims, stands, fits }: Saying): string {
  const by = claims.map((claim) =>
    [sourceOf(claim), ...(claim.sure ? [kitsWords.contents.sure[claim.sure]] : [])].join(", "),
  );
  return [...by, ...(stands ? [text.stands] : []), ...(fits ? [] : [text.misfit])].join("; ");
}

function Open({ kit, line, conflict }: ConflictProps) {
  const { field, sayings } = conflict;
  const [picked, setPicked] = useState<string | null>(null);
  const [reason, setReason] = useState("");
  const said = ({ value }: Saying): string => valueText(line.supply.family, field, value);
  const chosen = picked === null ? undefined : sayings[Number(picked)];
  const settle = (from: Element) => {
    if (!chosen) return;
    const decided = decidedFor(conflict, chosen, reason, today());
    void thenToHeading(from, () => doAct(decide(kit, line, pathOf(field), decided)));
  };
  return (
    <div className={styles.conflict}>
      <Choice
        label={text.choose(claimField(field))}
        value={picked}
        options={sayings.flatMap((saying, index) =>
          saying.fits ? [{ value: String(index), label: said(saying), more: sayersText(saying) }] : [],
        )}
        onValue={setPicked}
      />
      {sayings
        .filter(({ fits }) => !fits)
        .map((saying) => (
          <p key={JSON.stringify(saying.value)} className={styles.fact}>
            {said(saying)} {sayersText(saying)}
          </p>
        ))}
      <Field label={text.reason} hint={text.reasonHint} value={reason} onValue={setReason} />
      <div>
        <Button notNow={chosen ? null : text.notYet} onClick={(event) => settle(event.currentTarget)}>
          {text.verb}
        </Button>
      </div>
    </div>
  );
}

function Settled({ kit, line, conflict: { field, decided } }: ConflictProps) {
  if (!decided) return null;
  const { value, reason, date } = decided;
  const why = [...(reason ? [reason] : []), ...(date ? [format.date(date)] : [])];
  return (
    <p className={styles.settled}>
      <span>{text.settled(claimField(field), valueText(line.supply.family, field, value))}</span>
      <span className={styles.fact}>{why.join(", ")}</span>
      <Button
        kind="quiet"
        className={styles.change ?? ""}
        onClick={(event) =>
          void thenToHeading(event.currentTarget, () =>
            doAct(leaveOpen(kit, line, decided.field ?? field), null),
          )
        }
      >
        {text.reopen}
        <span className="visually-hidden">{kitsWords.contents.about(claimField(field))}</span>
      </Button>
    </p>
  );
}
