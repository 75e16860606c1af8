import type { Kit } from "../../../engine/worth/index.ts";
import { editKit, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { DateField, FieldRow, Section, Select, Tick } from "../../parts/index.ts";
import { KeptField, readNeeded, readText } from "../../supply-form/index.ts";
import { kitsWords } from "../../words/kits.ts";
import styles from "./contents.module.css";

const text = kitsWords.about;

type Props = Readonly<{ kit: Kit }>;
type Keep = (field: string, value: unknown) => void;

/** The facts about the kit itself, each kept when it is left. */
export function About({ kit }: Props) {
  const keep: Keep = (field, value) => void doAct(editKit(kit, [field], value), null);
  return (
    <Section title={text.title}>
      <div className={styles.about}>
        <FieldRow>
          <KeptField
            label={text.maker}
            value={kit.maker}
            read={readNeeded(text.makerMissing)}
            onKeep={(maker) => keep("maker", maker)}
          />
          <Words kit={kit} keep={keep} field="title" label={text.name} />
          <DateField
            label={text.month}
            want="month"
            value={kit.period}
            onValue={(period) => period && keep("period", period)}
          />
          <Days kit={kit} keep={keep} />
          <Words kit={kit} keep={keep} field="prompt" label={text.prompt} />
          <Words kit={kit} keep={keep} field="theme" label={text.theme} />
          <Words kit={kit} keep={keep} field="note" label={text.note} />
        </FieldRow>
        <Tick
          label={text.received}
          value={kit.received ?? false}
          onValue={(received) => keep("received", received)}
        />
      </div>
    </Section>
  );
}

type WordsProps = Props &
  Readonly<{ keep: Keep; field: "title" | "prompt" | "theme" | "note"; label: string }>;

function Words({ kit, keep, field, label }: WordsProps) {
  return (
    <KeptField
      label={label}
      wraps
      value={kit[field] ?? ""}
      read={readText}
      onKeep={(value) => keep(field, value)}
    />
  );
}

function Days({ kit, keep }: Props & Readonly<{ keep: Keep }>) {
  const markets = useBook((state) => state.book.markets) ?? [];
  return (
    <>
      <DateField
        label={text.valuedOn}
        hint={text.valuedHint}
        value={kit.valuedOn ?? null}
        onValue={(day) => keep("valuedOn", day ?? undefined)}
      />
      <Select
        label={text.shipsFrom}
        value={kit.shipsFrom ?? ""}
        options={[
          { value: "", label: text.anywhere },
          ...markets.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        onValue={(id) => keep("shipsFrom", id || undefined)}
      />
    </>
  );
}
