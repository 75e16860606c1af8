import type { Workbook } from "../../engine/workbook/index.ts";
import { useBook } from "../../store/index.ts";
import { useLastCopy } from "../keep-safe/last-copy.ts";
import { saveWholeCopy } from "../keep-safe/save-copy.ts";
import { Button, ButtonLink, notify, Section } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";
import styles from "./desk.module.css";
import { keptView } from "./view/kept.ts";

const words = deskWords.kept;

/** When the last copy was saved, what there is to lose, and a copy in one click. */
export function Kept({ book, today }: Readonly<{ book: Workbook; today: string }>) {
  const last = useLastCopy();
  const lasting = useBook((state) => state.lasting);
  const { lead, more } = keptView(book, last, { lasting, today });
  return (
    <Section title={words.title}>
      <p>
        {lead} <span className={styles.more}>{more}</span>
      </p>
      <p className={styles.keep}>
        <Button kind="quiet" onClick={() => void saveWholeCopy().then((told) => notify(told))}>
          {words.act}
        </Button>
        <ButtonLink kind="quiet" to={{ name: "keep-safe" }}>
          {words.place}
        </ButtonLink>
      </p>
    </Section>
  );
}
