import { Acts, ButtonLink, Section } from "../parts/index.ts";
import { otherAddress } from "../stash/item-link.tsx";
import { printWords } from "../words/print.ts";
import { saveWords as words } from "../words/save.ts";
import styles from "./keep-safe.module.css";

/** The stash as a list that other programs read, beside the copies that only the app reads. */
export const ListOut = () => (
  <Section title={words.apart}>
    <p className={styles.text}>{words.apartText}</p>
    <Acts>
      <ButtonLink to={otherAddress("save", "list")}>{words.save}</ButtonLink>
      <ButtonLink kind="quiet" to={otherAddress("print", "list")}>
        {printWords.listAct}
      </ButtonLink>
    </Acts>
  </Section>
);
