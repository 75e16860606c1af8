import { ButtonLink } from "../../parts/index.ts";
import { saveWords as words } from "../../words/save.ts";
import { otherOfThese } from "../item-link.tsx";
import styles from "./save.module.css";

/** From the stash as it is searched to a file of it, and to paper. */
export const Onwards = () => (
  <nav aria-label={words.onwards} className={styles.onwards}>
    <ButtonLink kind="quiet" to={otherOfThese("save", "list")}>
      {words.save}
    </ButtonLink>
    <ButtonLink kind="quiet" to={otherOfThese("print", "list")}>
      {words.print}
    </ButtonLink>
  </nav>
);
