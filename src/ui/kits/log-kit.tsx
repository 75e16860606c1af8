import { useState } from "react";
import type { Kit } from "../../engine/worth/index.ts";
import { addKit, newId, useBook } from "../../store/index.ts";
import { goAndDo } from "../app/acts.ts";
import { doAct } from "../app/do-act.ts";
import { Acts, Button, Chooser, DateField, Field, FieldRow, Section, Select, Tick } from "../parts/index.ts";
import { useFirstField } from "../parts/use-focus.ts";
import { useSubmit } from "../parts/use-submit.ts";
import { actWords } from "../words/acts.ts";
import { kitLogWords } from "../words/kit-log.ts";
import { kitsWords } from "../words/kits.ts";
import { Band } from "./band.tsx";
import styles from "./kits.module.css";
import { today } from "./today.ts";
import { type Copying, copiedLines } from "./view/copy-kit.ts";
import { kitName } from "./view/kits-list.ts";
import { isOld, kitBefore, likelyDay, makersOf, newKit } from "./view/new-kit.ts";

const text = kitsWords.log;

type Props = Readonly<{
  /** How often somebody asked for it: each time its first field takes the focus. */
  asked: number;
  /** The kit to start from; null for none. */
  from: string | null;
  onClose: () => void;
}>;

/** Asks for what a kit cannot be without, then opens its contents, to be written at once. */
export function LogKit({ asked, from, onClose }: Props) {
  const form = useFirstField<HTMLFormElement>(asked);
  const kits = useBook((state) => state.book.kits) ?? [];
  const [model, setModel] = useState(from);
  const start = kits.find(({ id }) => id === model) ?? null;
  const [withPrices, setWithPrices] = useState(true);
  const [maker, setMaker] = useState<string | null>(start?.maker ?? null);
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
    const made = newKit(newId("kit-", kits), draft, today(), takesOver ? before : null);
    const kit = start ? { ...made, lines: copiedLines(start, copying(start, withPrices)) } : made;
    const told = start
      ? kitLogWords.copy.told(kitsWords.contents.lead(kit.lines?.length ?? 0), kitName(start), withPrices)
      : undefined;
    if (await doAct(addKit(kit), told))
      goAndDo({ name: "kit", id: kit.id, tab: "contents" }, actWords.addLine);
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
            {kits.length > 0 && (
              <Start
                {...{ kits, model, withPrices, setWithPrices }}
                onModel={(id) => {
                  setModel(id);
                  setMaker((now) => now ?? kits.find((kit) => kit.id === id)?.maker ?? null);
                }}
              />
            )}
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

const copying = (kit: Kit, withPrices: boolean): Copying => ({
  withPrices,
  source: kitLogWords.copy.source(kitName(kit)),
  today: today(),
});

type StartProps = Readonly<{
  kits: readonly Kit[];
  model: string | null;
  onModel: (id: string | null) => void;
  withPrices: boolean;
  setWithPrices: (withPrices: boolean) => void;
}>;

/** Which earlier kit's contents to start from, and whether its prices count. */
function Start({ kits, model, onModel, withPrices, setWithPrices }: StartProps) {
  const options = kits
    .filter(({ lines }) => (lines ?? []).length > 0)
    .toSorted((a, b) => (a.period < b.period ? 1 : -1))
    .map((kit) => ({ value: kit.id, label: kitName(kit) }));
  return (
    <div className={styles.start}>
      <Select
        label={kitLogWords.copy.from}
        value={model ?? ""}
        options={[{ value: "", label: kitLogWords.copy.none }, ...options]}
        onValue={(id) => onModel(id || null)}
      />
      {model && <Tick label={kitLogWords.copy.prices} value={withPrices} onValue={setWithPrices} />}
    </div>
  );
}
