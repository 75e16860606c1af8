import { useState } from "react";
import {
  Acts,
  Button,
  Choice,
  Chooser,
  DateField,
  Field,
  FieldRow,
  FilePick,
  Menu,
  MoneyField,
  notify,
  Section,
  Select,
  Tick,
  Why,
} from "../parts/index.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

const texts = sheet.acts;

/** Buttons, then every kind of field. */
export function ActsAndFields() {
  return (
    <Section title={texts.title} note={texts.note} aside={texts.aside}>
      <Buttons />
      <TextFields />
      <ReadFields />
      <Choices />
    </Section>
  );
}

function Buttons() {
  return (
    <>
      <Acts>
        <Button kind="primary" onClick={() => notify(texts.done(texts.primary))}>
          {texts.primary}
        </Button>
        <Button>{texts.secondary}</Button>
        <Button notNow={texts.notNowWhy}>{texts.notNow}</Button>
        <FilePick
          label={texts.pick}
          accept="image/*"
          onFiles={(files) => notify(texts.picked(files.map((file) => file.name).join(", ")))}
        />
        <Button kind="quiet">{texts.quiet}</Button>
        <Menu
          label={texts.menu}
          acts={texts.menuActs.map((label) => ({ label, onPick: () => notify(texts.done(label)) }))}
        />
      </Acts>
      <Why about={texts.why}>{texts.whyText}</Why>
    </>
  );
}

function TextFields() {
  const [place, setPlace] = useState<string | null>(texts.kept);
  const [kind, setKind] = useState<string | null>(null);
  const [find, setFind] = useState("");
  const [wrong, setWrong] = useState("4.9O");
  return (
    <div className={styles.fields}>
      <FieldRow>
        <Chooser
          label={texts.where}
          value={place}
          onValue={setPlace}
          takesNew
          options={texts.places.map((label) => ({ value: label, label }))}
        />
        <Chooser
          label={texts.kind}
          value={kind}
          onValue={setKind}
          options={texts.kinds.map((label) => ({ value: label, label }))}
        />
        <Field label={texts.find} hint={texts.findHint} value={find} onValue={setFind} />
        <Field
          id="parts-price"
          label={texts.price}
          fault={texts.priceFault}
          value={wrong}
          onValue={setWrong}
          unit="EUR"
          keys="decimal"
        />
      </FieldRow>
    </div>
  );
}

function ReadFields() {
  const [paid, setPaid] = useState<{ amount: string | null; currency: string }>({
    amount: "59.54",
    currency: "SEK",
  });
  const [opened, setOpened] = useState<string | null>("2026-04-30");
  const [month, setMonth] = useState<string | null>("2026-04");
  const [note, setNote] = useState("");
  const [market, setMarket] = useState("SE");
  return (
    <div className={styles.fields}>
      <FieldRow>
        <MoneyField label={texts.paid} value={paid} onValue={setPaid} currencies={["EUR", "JPY", "SEK"]} />
        <DateField id="parts-opened" label={texts.opened} value={opened} onValue={setOpened} />
        <DateField label={texts.kitOf} want="month" value={month} onValue={setMonth} />
        <Select label={texts.market} value={market} onValue={setMarket} options={texts.markets} />
      </FieldRow>
      <Field label={texts.note2} value={note} onValue={setNote} lines={2} />
    </div>
  );
}

function Choices() {
  const [surface, setSurface] = useState("medium");
  const [how, setHow] = useState("nearest");
  const [fetched, setFetched] = useState(true);
  const [notForThis, setNotForThis] = useState(false);
  return (
    <div className={styles.fields}>
      <Choice
        label={texts.how}
        labelHidden
        value={how}
        onValue={setHow}
        options={[
          { value: "nearest", label: texts.nearest, more: texts.nearestMore },
          { value: "together", label: texts.together, more: texts.togetherMore },
        ]}
      />
      <Choice
        label={texts.surface}
        inline
        value={surface}
        onValue={setSurface}
        options={texts.surfaces.map((label) => ({ value: label, label }))}
      />
      <div className={styles.ticks}>
        <Tick label={texts.fetched} value={fetched} onValue={setFetched} />
        <Tick label={texts.notForThis} value={notForThis} onValue={setNotForThis} />
      </div>
    </div>
  );
}
