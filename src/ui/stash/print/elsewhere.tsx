import { withAddressValue } from "../../app/navigate.ts";
import { ButtonLink } from "../../parts/index.ts";
import { stashWords } from "../../words/stash.ts";
import styles from "./elsewhere.module.css";

type Props = Readonly<{ value: "list" | "chart"; label: string }>;

/** Back to the stash as it was searched, and the other way to print it. */
export function Elsewhere({ value, label }: Props) {
  return (
    <div className={styles.elsewhere}>
      <ButtonLink kind="quiet" to={withAddressValue("print", null)}>
        {stashWords.back}
      </ButtonLink>
      <ButtonLink kind="quiet" to={withAddressValue("print", value)}>
        {label}
      </ButtonLink>
    </div>
  );
}
