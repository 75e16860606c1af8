import { type ReactNode, useId } from "react";
import styles from "./choice.module.css";
import { classes } from "./classes.ts";
import { Below, type FieldBasics } from "./field-shell.tsx";

export type Option<Value extends string = string> = Readonly<{
  value: Value;
  label: ReactNode;
  /** A fact beside the label, such as what the choice would give. */
  more?: ReactNode;
}>;

type Props<Value extends string> = FieldBasics &
  Readonly<{
    value: Value | null;
    options: readonly Option<Value>[];
    onValue: (value: Value) => void;
    /** The label stands before the choices, not above them. */
    inline?: boolean;
  }>;

/** One of a few, all in sight. */
export function Choice<Value extends string>({ value, options, onValue, inline, ...props }: Props<Value>) {
  const made = useId();
  const id = props.id ?? made;
  const described = [props.hint ? `${id}-hint` : "", props.fault ? `${id}-fault` : ""]
    .filter(Boolean)
    .join(" ");
  return (
    <fieldset id={id} tabIndex={-1} className={styles.choice} aria-describedby={described || undefined}>
      <legend className={classes(styles.label, (props.labelHidden || inline) && "visually-hidden")}>
        {props.label}
      </legend>
      <div className={styles.options}>
        {inline && (
          <span className={styles.label} aria-hidden="true">
            {props.label}
          </span>
        )}
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              name={id}
              className={styles.radio}
              checked={option.value === value}
              onChange={() => onValue(option.value)}
            />
            <span>
              {option.label}
              {option.more && <span className={styles.more}> {option.more}</span>}
            </span>
          </label>
        ))}
      </div>
      <Below id={id} hint={props.hint} fault={props.fault} />
    </fieldset>
  );
}

type TickProps = Readonly<{
  label: ReactNode;
  more?: ReactNode;
  value: boolean;
  onValue: (value: boolean) => void;
  id?: string;
}>;

/** Yes or no. */
export function Tick({ label, more, value, onValue, id }: TickProps) {
  return (
    <label className={styles.option}>
      <input
        id={id}
        type="checkbox"
        className={styles.tick}
        checked={value}
        onChange={(event) => onValue(event.currentTarget.checked)}
      />
      <span>
        {label}
        {more && <span className={styles.more}> {more}</span>}
      </span>
    </label>
  );
}
