import { useState } from "react";
import { doAct } from "../../app/do-act.ts";
import { Button, Section, Select } from "../../parts/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { changeField } from "../acts.ts";
import styles from "../entries.module.css";
import { roleOptions } from "../view/bench.ts";
import { changedAt, keyed, withoutAt } from "../view/lists.ts";
import { type Subject, shelvesOf } from "../view/solve.ts";
import { FromStash, StashThing } from "./from-stash.tsx";

const words = remakeWords.bench;

/** The basics that rule 3 lets in: something to draw with, on, or to erase with. */
export function Basics({ subject }: Readonly<{ subject: Subject }>) {
  const { remake } = subject;
  const [role, setRole] = useState("sketch");
  const basics = remake.essentials ?? [];
  const shelves = shelvesOf(subject);
  const keep = (next: unknown, told: string | null = null) =>
    void doAct(changeField(remake, "essentials", next, remakeWords.acts.basics), told);
  return (
    <Section title={words.basics}>
      <p className={styles.intro}>{words.basicsText}</p>
      <ul className={styles.list}>
        {keyed(basics).map(({ key, index, entry }) => {
          const item = shelves.item(entry.stash);
          return (
            <li key={key} className={`${styles.entry} ${styles.paired}`}>
              <StashThing item={item} />
              <Select
                label={words.role}
                value={entry.role ?? "sketch"}
                options={roleOptions(entry.role)}
                onValue={(next) => keep(changedAt(basics, index, { role: next }))}
              />
              <Button
                kind="quiet"
                aria-label={remakeWords.removeNamed(item?.supply.name ?? words.basics)}
                onClick={() =>
                  keep(withoutAt(basics, index), words.removed(item?.supply.name ?? words.basics))
                }
              >
                {remakeWords.remove}
              </Button>
            </li>
          );
        })}
      </ul>
      <FromStash
        book={subject.book}
        act={words.addBasic}
        onAdd={(stash) => keep([...basics, { stash, role }])}
      >
        <Select label={words.role} value={role} options={roleOptions(null)} onValue={setRole} />
      </FromStash>
    </Section>
  );
}
