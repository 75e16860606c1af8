import { useState } from "react";
import { addKit, newId, useBook } from "../../store/index.ts";
import { goAndDo } from "../app/acts.ts";
import { doAct } from "../app/do-act.ts";
import { Acts, Button, Chooser, DateField, Field, FieldRow, Section, Tick } from "../parts/index.ts";
import { useFirstField } from "../parts/use-focus.ts";
import { useSubmit } from "../parts/use-submit.ts";
import { actWords } from "../words/acts.ts";
import { kitsWords } from "../words/kits.ts";
import { Band } from "./band.tsx";
import styles from "./kits.module.css";
import { today } from "./today.ts";
import { kitName } from "./view/kits-list.ts";
import { isOld, kitBefore, likelyDay, makersOf, newKit } from "./view/new-kit.ts";

const text = kitsWords.log;

type Props = Readonly<{
  /** How often somebody asked for it: each time its first field takes the focus. */
  asked: number;
  onClose: () => void;
}>;

/** Asks for what a kit cannot be without, then opens its contents, to be written at once. */
export function LogKit({ asked, onClose }: Props) {
  const form = useFirstField<HTMLFormElement>(asked);
  const kits = useBook((state) => state.book.kits) ?? [];
  const [maker, setMaker] = useState<string | null>(null);
  const [period, setPeriod] = useState<string | null>(null);
  const [title, setTitle] = useState("");
  const [day, setDay] = useState<string | null | undefined>(undefined); // undefined: left to what is likely
  const [takesOver, setTakesOver] = useState(true);
  const [tried, setTried] = useState(false);
  const before = maker && period ? kitBefore(kits, { maker, period }) : null;

  const log = async () => {
    setTried(true);
    if (!maker || !period) return;
    const valuedOn = day === undefined ? likelyDay(period, today()) : day;
    const draft = { maker, period, title: title.trim() || null, valuedOn };
    const kit = newKit(newId("kit-", kits), draft, today(), takesOver ? before : null);
    if (await doAct(addKit(kit))) goAndDo({ name: "kit", id: kit.id, tab: "contents" }, actWords.addLine);
  };
  const submit = useSubmit(log);
  return (
    <Band>
      <Section title={text.title}>
        <p className={styles.fact}>{text.text}</p>
        <form ref={form} onSubmit={submit}>
          <div className={styles.log}>
            <FieldRow>
              <Chooser
                label={text.maker}
                value={maker}
                options={makersOf(kits).map((value) => ({ value, label: value }))}
                onValue={setMaker}
                takesNew
                fault={tried && !maker ? text.makerMissing : undefined}
              />
              <DateField
                label={text.month}
                want="month"
                value={period}
                onValue={setPeriod}
                fault={tried && !period ? text.monthMissing : undefined}
              />
              <Field label={text.name} value={title} onValue={setTitle} />
              {period && isOld(period, today()) && (
                <DateField
                  label={kitsWords.about.valuedOn}
                  hint={text.valuedHint}
                  value={day === undefined ? likelyDay(period, today()) : day}
                  onValue={setDay}
                />
              )}
            </FieldRow>
            {before && (
              <Tick label={text.takeOver(kitName(before))} value={takesOver} onValue={setTakesOver} />
            )}
          </div>
          <Acts>
            <Button kind="primary" type="submit">
              {text.verb}
            </Button>
            <Button onClick={onClose}>{text.cancel}</Button>
          </Acts>
        </form>
      </Section>
    </Band>
  );
}
