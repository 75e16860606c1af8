import type { ReactNode } from "react";
import { Acts, Button, FieldRow } from "../parts/index.ts";
import { marketsWords } from "../words/markets.ts";
import styles from "./markets.module.css";

type Props = Readonly<{
  /** What adding it says: "Add the shop". */
  verb: string;
  onAdd: () => Promise<void>;
  onClose: () => void;
  children: ReactNode;
}>;

/** The form of a new thing on this page: its fields, then add it or leave it. */
export function NewThing({ verb, onAdd, onClose, children }: Props) {
  return (
    <div className={styles.form}>
      <FieldRow>{children}</FieldRow>
      <Acts>
        <Button kind="primary" onClick={() => void onAdd()}>
          {verb}
        </Button>
        <Button kind="quiet" onClick={onClose}>
          {marketsWords.cancel}
        </Button>
      </Acts>
    </div>
  );
}
