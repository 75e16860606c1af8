import { classes } from "../parts/index.ts";
import type { Making as MakingView } from "./view/making.ts";
import styles from "./worth.module.css";

/** How a tier's cost came about, step by step, and who decides at a border. */
export function Making({ making, title }: Readonly<{ making: MakingView; title: string }>) {
  return (
    <div className={styles.making}>
      <h3 className={styles.makingTitle}>{title}</h3>
      <ol className={styles.steps}>
        {making.steps.map((step) => (
          <li key={step.what} className={classes(styles.step, step.total && styles.sum)}>
            <span>{step.what}</span>
            <span className={styles.how}>{step.how}</span>
            <span className={styles.stepAmount}>{step.amount}</span>
          </li>
        ))}
      </ol>
      {making.caution && <p className={styles.caution}>{making.caution}</p>}
    </div>
  );
}
