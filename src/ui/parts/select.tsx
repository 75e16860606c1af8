import styles from "./field.module.css";
import { type FieldBasics, FieldShell, useFieldIds } from "./field-shell.tsx";

type Props<Value extends string> = FieldBasics &
  Readonly<{
    value: Value;
    options: readonly Readonly<{ value: Value; label: string }>[];
    onValue: (value: Value) => void;
  }>;

/** One of many, in the browser's own list. */
export function Select<Value extends string>({ value, options, onValue, ...props }: Props<Value>) {
  const { id, control } = useFieldIds(props);
  const pick = (picked: string) => {
    const option = options.find((known) => known.value === picked);
    if (option) onValue(option.value);
  };
  return (
    <FieldShell {...props} id={id}>
      <select
        {...control}
        className={styles.line}
        value={value}
        onChange={(event) => pick(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </FieldShell>
  );
}
