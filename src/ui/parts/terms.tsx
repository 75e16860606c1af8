import type { ReactNode } from "react";
import { Link } from "../app/link.tsx";
import { words } from "../words/index.ts";
import type { Term } from "../words/terms.ts";
import { termsIn } from "./read/terms-in.ts";
import styles from "./term.module.css";
import { TermText } from "./term.tsx";

type ToldProps = Readonly<{ children: ReactNode; terms: readonly Term[] }>;

/** A sentence whose own words can be asked what they mean, each the first time it stands there. */
export function Told({ children, terms }: ToldProps) {
  if (typeof children !== "string") return children;
  return termsIn(children, terms).map(({ text, term }, index) =>
    term ? (
      <TermText key={term} of={term}>
        {text}
      </TermText>
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the stretches of one sentence, in their order
      <span key={index}>{text}</span>
    ),
  );
}

/** The words of ours that a page uses, at its foot. */
export function TermsLine({ terms }: Readonly<{ terms: readonly Term[] }>) {
  return (
    <aside aria-label={words.terms.here} className={styles.line}>
      <span aria-hidden="true">{words.terms.here}</span>
      {terms.map((term) => (
        <TermText key={term} of={term} />
      ))}
      <Link to={{ name: "words" }}>{words.terms.all}</Link>
    </aside>
  );
}
