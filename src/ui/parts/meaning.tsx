import { useLayoutEffect } from "react";
import { Link } from "../app/link.tsx";
import { wordsAddress } from "../app/terms-of.ts";
import { words } from "../words/index.ts";
import { meanings } from "../words/meanings.ts";
import { type Term, terms } from "../words/terms.ts";
import styles from "./term.module.css";

type Props = Readonly<{ of: Term; onShown: () => void }>;

/** What one of our words means, what stands behind it, and the way to all of them. */
export function Meaning({ of, onShown }: Props) {
  const { text, behind } = meanings[of];
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, as soon as its size is known
  useLayoutEffect(onShown, []);
  return (
    <span role="note" className={styles.meaning}>
      <strong className={styles.word}>{terms[of][0]}</strong>
      <span>{text}</span>
      {behind && <span className={styles.behind}>{behind}</span>}
      <Link to={wordsAddress(of)} className={styles.all}>
        {words.terms.all}
      </Link>
    </span>
  );
}
