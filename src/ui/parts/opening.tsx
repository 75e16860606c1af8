import type { ReactNode } from "react";
import styles from "./opening.module.css";

/** What a row opens, growing to its height as it comes. It is there from the start for whoever reads it out. */
export const Opening = ({ children }: Readonly<{ children: ReactNode }>) => (
  <div className={styles.opening}>
    <div>{children}</div>
  </div>
);
