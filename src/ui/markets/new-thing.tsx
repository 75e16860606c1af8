import type { ReactNode } from "react";
import { Acts, Button, FieldRow } from "../parts/index.ts";
import { useFirstField } from "../parts/use-focus.ts";
import { useSubmit } from "../parts/use-submit.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";

type Props = Readonly<{
  /** How often it was asked for: each time its first field takes the focus. */
  asked: number;
  /** What adding it says: "Add the shop". */
  verb: string;
  onAdd: () => Promise<void>;
  /** Leaves it; a form that is asked in place has nothing to go back to. */
  onClose?: () => void;
  children: ReactNode;
}>;

/** The form of a new thing on this page: its fields, then add it, from any of them with Enter, or leave it. */
export function NewThing({ asked, verb, onAdd, onClose, children }: Props) {
  const form = useFirstField<HTMLFormElement>(asked);
  return (
    <form ref={form} className={styles.form} onSubmit={useSubmit(onAdd)}>
      <FieldRow>{children}</FieldRow>
      <Acts>
        <Button kind="primary" type="submit">
          {verb}
        </Button>
        {onClose && (
          <Button kind="quiet" onClick={onClose}>
            {marketsWords.cancel}
          </Button>
        )}
      </Acts>
    </form>
  );
}
