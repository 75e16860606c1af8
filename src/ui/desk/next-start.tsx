import { ButtonLink } from "../parts/index.ts";
import styles from "./desk.module.css";
import type { StartView } from "./view/start.ts";

/** The one act that comes next when no remake is under way. */
export const NextStart = ({ start }: Readonly<{ start: StartView }>) => (
  <div className={styles.go}>
    <ButtonLink kind="primary" to={start.to}>
      {start.act}
    </ButtonLink>
  </div>
);
