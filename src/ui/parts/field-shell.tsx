import { type ReactNode, useId } from "react";
import { words } from "../words/index.ts";
import { classes } from "./classes.ts";
import styles from "./field.module.css";

/** What every field can be given. */
export type FieldBasics = Readonly<{
  label: string;
  /** Set it where a fault list links to the field. */
  id?: string | undefined;
  /** How to fill it in, shown before it is. */
  hint?: ReactNode;
  /** What is wrong and the fix, as one or two sentences. */
  fault?: ReactNode;
  /** The text under the field asks something; it is not at fault. */
  asks?: boolean | undefined;
  /** The label is only read out: for a field whose place says what it is. */
  labelHidden?: boolean | undefined;
}>;

/** The ids that tie a control to its label, hint and fault. */
export function useFieldIds(basics: FieldBasics) {
  const made = useId();
  const id = basics.id ?? made;
  const described = [basics.hint ? `${id}-hint` : "", basics.fault ? `${id}-fault` : ""].filter(Boolean);
  return {
    id,
    control: {
      id,
      "aria-describedby": described.length > 0 ? described.join(" ") : undefined,
      "aria-invalid": basics.fault ? true : undefined,
    },
  } as const;
}

type ShellProps = FieldBasics & Readonly<{ id: string; children: ReactNode }>;

/** Label above, control, then the hint or the fault under it. */
export function FieldShell({ id, label, labelHidden, hint, fault, asks, children }: ShellProps) {
  return (
    <div className={classes(styles.field, Boolean(fault) && styles.atFault)}>
      <label htmlFor={id} className={classes(styles.label, labelHidden && "visually-hidden")}>
        {label}
      </label>
      {children}
      <Below id={id} hint={hint} fault={fault} asks={asks} />
    </div>
  );
}

type BelowProps = Pick<FieldBasics, "hint" | "fault" | "asks"> & Readonly<{ id: string }>;

/** The hint and the fault under a control. */
export function Below({ id, hint, fault, asks }: BelowProps) {
  return (
    <>
      {hint && (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      )}
      {fault && (
        <p id={`${id}-fault`} className={styles.fault}>
          {!asks && <strong>{words.faultMark} </strong>}
          {fault}
        </p>
      )}
    </>
  );
}
