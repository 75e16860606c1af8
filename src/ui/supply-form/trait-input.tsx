import { sizeWords } from "../../engine/supply/index.ts";
import { Button, Select, Tick } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { supplyWords as words } from "../words/supply.ts";
import { KeptField } from "./kept-field.tsx";
import styles from "./supply-form.module.css";
import { readNumber, readSize, readTexts } from "./view/read-trait.ts";
import type { TraitField } from "./view/trait-fields.ts";

type Props = Readonly<{
  field: TraitField;
  value: unknown;
  /** What the others of its line mostly are, and how many: offered while nothing is said. */
  likely?: Readonly<{ value: unknown; count: number }> | null;
  onValue: (value: unknown) => void;
}>;

const listOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];
const print = (value: number): string => format.number(value, 3);

/** A size as it is written back into its field. */
function sizeText(value: unknown): string {
  if (typeof value === "string") return value;
  const [short, long] = Array.isArray(value) ? value.map(Number) : [];
  return short === undefined || long === undefined ? "" : sizeWords([short, long], print);
}

/** The field of one trait, in the way its kind is filled in, and what it is likely to be. */
export function TraitInputField({ likely = null, ...props }: Props) {
  const { field, value, onValue } = props;
  if (!likely || (value !== undefined && value !== null)) return <TraitControl {...props} />;
  return (
    <div>
      <TraitControl {...props} />
      <Button kind="quiet" onClick={() => onValue(likely.value)}>
        {words.asOthers(valueText(field, likely.value), format.count(likely.count))}
        <span className="visually-hidden">{words.asOthersOf(field.label)}</span>
      </Button>
    </div>
  );
}

function TraitControl({ field, value, onValue }: Omit<Props, "likely">) {
  const { input, label, unit } = field;
  switch (input.kind) {
    case "word":
      return <OneOf label={label} options={input.options} value={value} onValue={onValue} />;
    case "yes-no":
      return <YesNo label={label} value={value} onValue={onValue} />;
    case "words":
      return <SomeOf label={label} options={input.options} value={listOf(value)} onValue={onValue} />;
    case "number":
      return (
        <KeptField
          label={label}
          unit={unit}
          keys={input.whole ? "numeric" : "decimal"}
          value={typeof value === "number" ? print(value) : ""}
          read={(text) => readNumber(text, input.whole)}
          onKeep={onValue}
        />
      );
    case "texts":
      return (
        <KeptField
          label={label}
          hint={words.list}
          value={listOf(value).join(", ")}
          read={readTexts}
          onKeep={onValue}
        />
      );
    case "size":
      return (
        <KeptField
          label={label}
          hint={words.sizeHint}
          value={sizeText(value)}
          read={readSize}
          onKeep={onValue}
        />
      );
  }
}

/** A trait's value as the form would show it: "14 ml", "opaque", "PB29, PY35". */
function valueText({ input, unit }: TraitField, value: unknown): string {
  const wordOf = (word: string) =>
    (input.kind === "word" || input.kind === "words"
      ? input.options.find((option) => option.value === word)?.label
      : null) ?? word;
  if (typeof value === "number") return [print(value), unit].filter(Boolean).join(" ");
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (input.kind === "size") return sizeText(value);
  return typeof value === "string" ? wordOf(value) : listOf(value).map(wordOf).join(", ");
}

type OneOfProps = Readonly<{
  label: string;
  options: readonly Readonly<{ value: string; label: string }>[];
  value: unknown;
  onValue: (value: unknown) => void;
}>;

/** One word of a few, or not said. */
export function OneOf({ label, options, value, onValue }: OneOfProps) {
  const all = [{ value: "", label: words.notSaid }, ...options];
  return (
    <Select
      label={label}
      value={typeof value === "string" ? value : ""}
      options={all}
      onValue={(picked) => onValue(picked === "" ? undefined : picked)}
    />
  );
}

function YesNo({ label, value, onValue }: Omit<OneOfProps, "options">) {
  const said = typeof value === "boolean" ? (value ? "yes" : "no") : "";
  return (
    <OneOf
      label={label}
      options={[
        { value: "yes", label: words.yes },
        { value: "no", label: words.no },
      ]}
      value={said}
      onValue={(picked) => onValue(picked === undefined ? undefined : picked === "yes")}
    />
  );
}

type SomeOfProps = Omit<OneOfProps, "value"> & Readonly<{ value: readonly string[] }>;

function SomeOf({ label, options, value, onValue }: SomeOfProps) {
  const toggle = (word: string, on: boolean) => {
    const next = options
      .map((option) => option.value)
      .filter((one) => (one === word ? on : value.includes(one)));
    onValue(next.length > 0 ? next : undefined);
  };
  return (
    <fieldset>
      <legend className={styles.legend}>{label}</legend>
      <div className={styles.ticks}>
        {options.map((option) => (
          <Tick
            key={option.value}
            label={option.label}
            value={value.includes(option.value)}
            onValue={(on) => toggle(option.value, on)}
          />
        ))}
      </div>
    </fieldset>
  );
}
