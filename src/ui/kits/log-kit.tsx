import { useState } from "react";
import { addKit, newId, useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { go } from "../app/navigate.ts";
import { Acts, Button, Chooser, DateField, Field, FieldRow, Section, Tick } from "../parts/index.ts";
import { useFirstField } from "../parts/use-focus.ts";
import { kitsWords } from "../words/kits.ts";
import { Band } from "./band.tsx";
import styles from "./kits.module.css";
import { today } from "./today.ts";
import { kitName } from "./view/kits-list.ts";
import { kitBefore, makersOf, newKit } from "./view/new-kit.ts";

const text = kitsWords.log;

type Props = Readonly<{
  /** Whether somebody asked for it: then its first field takes the focus. */
  isAsked: boolean;
  onClose: () => void;
}>;

/** Asks for what a kit cannot be without, then opens its contents. */
export function LogKit({ isAsked, onClose }: Props) {
  const form = useFirstField(isAsked);
  const kits = useBook((state) => state.book.kits) ?? [];
  const [maker, setMaker] = useState<string | null>(null);
  const [period, setPeriod] = useState<string | null>(null);
  const [title, setTitle] = useState("");
  const [takesOver, setTakesOver] = useState(true);
  const [tried, setTried] = useState(false);
  const before = maker && period ? kitBefore(kits, { maker, period }) : null;

  const log = async () => {
    setTried(true);
    if (!maker || !period) return;
    const draft = { maker, period, title: title.trim() || null };
    const kit = newKit(newId("kit-", kits), draft, today(), takesOver ? before : null);
    if (await doAct(addKit(kit))) go({ name: "kit", id: kit.id, tab: "contents" });
  };
  return (
    <Band>
      <Section title={text.title}>
        <p className={styles.fact}>{text.text}</p>
        <div className={styles.log} ref={form}>
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
            <Field label={text.name} value={title} onValue={setTitle} onEnter={log} />
          </FieldRow>
          {before && <Tick label={text.takeOver(kitName(before))} value={takesOver} onValue={setTakesOver} />}
        </div>
        <Acts>
          <Button kind="primary" onClick={log}>
            {text.verb}
          </Button>
          <Button onClick={onClose}>{text.cancel}</Button>
        </Acts>
      </Section>
    </Band>
  );
}
