import { useState } from "react";
import type { Workbook } from "../../../engine/workbook/index.ts";
import { newId, startRemake } from "../../../store/index.ts";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { go, useAddressValue } from "../../app/navigate.ts";
import { Button, Chooser, DateField, FaultList, Section } from "../../parts/index.ts";
import { actWords } from "../../words/acts.ts";
import { remakeWords } from "../../words/remakes.ts";
import { today } from "../today.ts";
import { kitOptions, newRemake } from "../view/list.ts";
import { kitTitle } from "../view/solve.ts";
import styles from "./start.module.css";

const words = remakeWords.list;
const [kitField, dayField] = ["start-kit", "start-day"];

const takeUp = [{ name: actWords.takeUp, run: () => document.getElementById(kitField)?.focus() }];

/** Takes up a kit: which, and since when. `?kit=` in the address chooses it beforehand. */
export function Start({ book }: Readonly<{ book: Workbook }>) {
  const [kitId, setKit] = useAddressValue("kit");
  const [started, setStarted] = useState<string | null>(() => today());
  const [attempt, setAttempt] = useState(0);
  useOffer(takeUp);
  const kit = book.kits?.find(({ id }) => id === kitId);
  const faults =
    attempt === 0
      ? []
      : [
          ...(kit ? [] : [{ field: kitField, message: words.noKit }]),
          ...(started ? [] : [{ field: dayField, message: words.noDate }]),
        ];
  const start = async () => {
    setAttempt(attempt + 1);
    if (!kit || !started) return;
    const remake = newRemake(newId("rm-", book.remakes), kit, started);
    if (await doAct(startRemake(remake, kit), words.begunSaid(kitTitle(kit))))
      go({ name: "remake", id: remake.id, tab: "stand-ins" });
  };
  return (
    <Section title={words.startTitle} id="start">
      <FaultList faults={faults} attempt={attempt} />
      <div className={styles.form}>
        <Chooser
          id={kitField}
          label={words.whichKit}
          hint={words.whichKitHint}
          value={kit ? kit.id : null}
          options={kitOptions(book)}
          onValue={setKit}
          fault={faults.find(({ field }) => field === kitField)?.message}
        />
        <DateField
          id={dayField}
          label={words.started}
          hint={words.startedHint}
          value={started}
          onValue={setStarted}
          fault={faults.find(({ field }) => field === dayField)?.message}
        />
      </div>
      <Button kind="primary" onClick={() => void start()}>
        {words.start}
      </Button>
    </Section>
  );
}
