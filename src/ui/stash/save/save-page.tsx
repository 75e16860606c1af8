import { type ListKind, listKinds } from "../../../workers/index.ts";
import { withAddressValue } from "../../app/navigate.ts";
import { Acts, Button, ButtonLink, Section } from "../../parts/index.ts";
import { printWords } from "../../words/print.ts";
import { saveWords as words } from "../../words/save.ts";
import { otherOfThese } from "../item-link.tsx";
import { OtherPage } from "../other-page.tsx";
import { useThings } from "../print/use-things.ts";
import { WhichThings } from "../print/which.tsx";
import { NotInIt } from "./not-in-it.tsx";
import styles from "./save.module.css";
import { useListFile } from "./use-list-file.ts";

/** Where the stash, or what was found in it, becomes a file for a spreadsheet. */
export function SavePage() {
  const things = useThings();
  const { items } = things;
  const { saving, save, lookAt } = useListFile();
  return (
    <OtherPage words={words} back={withAddressValue("save", null)}>
      <div className={styles.which}>
        <WhichThings things={things} />
      </div>
      <Section title={words.kinds}>
        <ul className={styles.kinds}>
          {listKinds.map((kind) => (
            <Kind
              key={kind}
              kind={kind}
              notNow={items.length === 0 ? words.nothing : saving.busy && words.writing}
              onSave={() => void save(kind, items)}
            />
          ))}
        </ul>
        <p role="status" className={styles.saved}>
          {saving.says}
        </p>
      </Section>
      {items.length > 0 && <NotInIt items={items} lookAt={lookAt} />}
      <Section title={words.paper}>
        <Acts>
          <ButtonLink to={otherOfThese("print", "list")}>{printWords.listAct}</ButtonLink>
          <ButtonLink to={otherOfThese("print", "chart")}>{printWords.chartAct}</ButtonLink>
        </Acts>
      </Section>
    </OtherPage>
  );
}

type KindProps = Readonly<{ kind: ListKind; notNow: string | false; onSave: () => void }>;

const Kind = ({ kind, notNow, onSave }: KindProps) => (
  <li className={styles.kind}>
    <Button kind={kind === "xlsx" ? "primary" : "secondary"} notNow={notNow} onClick={onSave}>
      {words.kind[kind]}
    </Button>
    <span className={styles.fact}>{words.kindText[kind]}</span>
  </li>
);
