import type { ReactNode } from "react";
import { FieldRow } from "../../parts/index.ts";
import styles from "./kin.module.css";

/** The fields of one of the two that are linked. */
export function SideFields({ legend, children }: Readonly<{ legend: string; children: ReactNode }>) {
  return (
    <fieldset>
      <legend className={styles.legend}>{legend}</legend>
      <FieldRow>{children}</FieldRow>
    </fieldset>
  );
}
