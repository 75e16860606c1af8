import { type MouseEvent, type ReactNode, useEffect, useId, useRef } from "react";
import { words } from "../words/index.ts";
import styles from "./blocks.module.css";
import { Acts } from "./button.tsx";

type EmptyProps = Readonly<{ title: ReactNode; children?: ReactNode; act?: ReactNode }>;

/** A dashed frame where something will be: what it will be, and one act. */
export function Empty({ title, children, act }: EmptyProps) {
  return (
    <div className={styles.empty}>
      <p className={styles.title}>{title}</p>
      {children && <div className={styles.will}>{children}</div>}
      {act && <div className={styles.act}>{act}</div>}
    </div>
  );
}

type FaultProps = Readonly<{ title: ReactNode; children?: ReactNode; acts?: ReactNode }>;

/** Something failed: what, what is safe all the same, and the ways out. */
export function Fault({ title, children, acts }: FaultProps) {
  return (
    <div role="alert" className={styles.fault}>
      <p className={styles.title}>{title}</p>
      {children && <div>{children}</div>}
      {acts && (
        <div className={styles.act}>
          <Acts>{acts}</Acts>
        </div>
      )}
    </div>
  );
}

export type FieldFault = Readonly<{ field: string; message: ReactNode }>;

type ListProps = Readonly<{
  /** `field` is the id of the field at fault. */
  faults: readonly FieldFault[];
  /** Change it with each attempt, so that the list takes the focus again. */
  attempt?: number;
}>;

/** All faults of a form, one link each. It takes the focus when it appears. */
export function FaultList({ faults, attempt = 0 }: ListProps) {
  const ref = useRef<HTMLDivElement>(null);
  const titleId = useId();
  const any = faults.length > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new attempt asks for the focus again
  useEffect(() => {
    if (any) ref.current?.focus();
  }, [any, attempt]);
  if (!any) return null;
  return (
    <section ref={ref} tabIndex={-1} aria-labelledby={titleId} className={styles.fault}>
      <h2 id={titleId} className={styles.title}>
        {words.faultsTitle(faults.length)}
      </h2>
      <ul>
        {faults.map((fault) => (
          <li key={fault.field}>
            <a href={`#${fault.field}`} onClick={(event) => focusField(event, fault.field)}>
              {fault.message}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function focusField(event: MouseEvent, id: string): void {
  event.preventDefault();
  const field = document.getElementById(id);
  const inner = field?.matches("fieldset") ? field.querySelector<HTMLElement>("input") : null;
  (inner ?? field)?.focus();
}
