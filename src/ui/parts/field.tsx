import type { KeyboardEvent, ReactNode, Ref } from "react";
import { classes } from "./classes.ts";
import styles from "./field.module.css";
import { type FieldBasics, FieldShell, useFieldIds } from "./field-shell.tsx";

type Props = FieldBasics &
  Readonly<{
    value: string;
    onValue: (value: string) => void;
    /** Called when the field is left: the time to check what is in it, and to keep it. */
    onLeave?: ((value: string) => void) | undefined;
    /** Called on Enter, in a field of one line. */
    onEnter?: ((value: string) => void) | undefined;
    /** More than 1 makes a field of several lines. */
    lines?: number;
    /** One line of prose that wraps and grows with its text, so that all of it is seen. */
    wraps?: boolean;
    kind?: "text" | "search" | "url";
    /** Which keys a phone shows. */
    keys?: "text" | "decimal" | "numeric";
    /** What stands after the writing line, such as a unit. */
    unit?: ReactNode;
    placeholder?: string;
    autoFocus?: boolean;
    inputRef?: Ref<HTMLInputElement & HTMLTextAreaElement>;
  }>;

/** A field of text, on one line or several. */
export function Field(props: Props) {
  const { id, control } = useFieldIds(props);
  const line = <Line {...props} control={control} />;
  return (
    <FieldShell {...props} id={id}>
      {props.unit ? (
        <div className={styles.side}>
          {line}
          <span className={styles.unit}>{props.unit}</span>
        </div>
      ) : (
        line
      )}
    </FieldShell>
  );
}

type LineProps = Props & Readonly<{ control: ReturnType<typeof useFieldIds>["control"] }>;

function Line({
  control,
  value,
  onValue,
  onLeave,
  onEnter,
  lines = 1,
  wraps = false,
  kind,
  keys,
  placeholder,
  ...rest
}: LineProps) {
  const shared = {
    ...control,
    className: styles.line,
    value,
    placeholder,
    autoFocus: rest.autoFocus,
    inputMode: keys,
    ref: rest.inputRef,
    autoComplete: "off",
    onBlur: () => onLeave?.(value),
  };
  if (lines > 1)
    return <textarea {...shared} rows={lines} onChange={(e) => onValue(e.currentTarget.value)} />;
  const enter = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || !(onEnter || wraps) || event.nativeEvent.isComposing) return;
    event.preventDefault();
    onEnter?.(value);
  };
  if (wraps)
    return (
      <textarea
        {...shared}
        className={classes(styles.line, styles.wraps)}
        rows={1}
        onKeyDown={enter}
        onChange={(e) => onValue(e.currentTarget.value.replaceAll(/\s*\n\s*/g, " "))}
      />
    );
  return (
    <input
      {...shared}
      type={kind ?? "text"}
      onKeyDown={enter}
      onChange={(e) => onValue(e.currentTarget.value)}
    />
  );
}

/** Fields side by side, as many as fit. */
export function FieldRow({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.row}>{children}</div>;
}
