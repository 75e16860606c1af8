import type { ReactNode } from "react";
import styles from "./band.module.css";

/** A stretch on the ground behind, from the double rule to the fore-edge: where something is put in. */
export function Band({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.band}>{children}</div>;
}
