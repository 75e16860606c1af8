import { useMemo, useState } from "react";
import type { Line } from "../../../engine/price/index.ts";
import { readLine } from "../../../engine/supply/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { addVariant, followVariant, language, removeVariant, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Field } from "../../parts/index.ts";
import { useSubmit } from "../../parts/use-submit.ts";
import { Swatch } from "../../swatch/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { knownNames } from "../view/entry.ts";
import { factsText } from "../view/line-rows.ts";
import styles from "./contents.module.css";

const text = kitLogWords.variants;

type Props = Readonly<{ kit: Kit; line: Line }>;

/** The other forms that a thing was sent in, and which one the line goes by. */
export function Variants({ kit, line }: Props) {
  const variants = line.variants ?? [];
  const follow = (index: number) => {
    const act = followVariant(kit, line, index);
    return act ? doAct(act) : Promise.resolve(false);
  };
  return (
    <section aria-label={text.title}>
      <h3>{text.title}</h3>
      <p className={styles.fact}>{variants.length > 0 ? text.text : text.none}</p>
      <ul className={styles.variants}>
        {variants.map((supply, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: forms have no name of their own, and keep no state
          <li key={index}>
            <Swatch item={{ id: `${kit.id}/${line.id}/${index}`, supply }} width={56} height={30} />
            <span>
              {supply.name} <span className={styles.facts}>{factsText(supply)}</span>
            </span>
            <Button
              kind="quiet"
              className={styles.change ?? ""}
              onClick={(event) => void thenToHeading(event.currentTarget, () => follow(index))}
            >
              {text.follow}
              <span className="visually-hidden">{kitsWords.contents.about(supply.name)}</span>
            </Button>
            <Button
              kind="quiet"
              className={styles.change ?? ""}
              onClick={(event) =>
                void thenToHeading(event.currentTarget, () => doAct(removeVariant(kit, line, index)))
              }
            >
              {text.remove}
              <span className="visually-hidden">{kitsWords.contents.about(supply.name)}</span>
            </Button>
          </li>
        ))}
      </ul>
      <AddForm kit={kit} line={line} />
    </section>
  );
}

function AddForm({ kit, line }: Props) {
  const book = useBook((state) => state.book);
  const known = useMemo(() => knownNames(book), [book]);
  const [typed, setTyped] = useState("");
  const read = typed.trim() === "" ? null : readLine(typed, known, language).supply;
  const add = async () => {
    if (read && (await doAct(addVariant(kit, line, read), null))) setTyped("");
  };
  return (
    <form className={styles.editor} onSubmit={useSubmit(add)}>
      <Field
        label={text.write}
        value={typed}
        onValue={setTyped}
        hint={read ? text.reads(read.name, factsText(read)) : undefined}
      />
      <div>
        <Button type="submit" notNow={read ? null : text.notYet}>
          {text.verb}
        </Button>
      </div>
    </form>
  );
}
