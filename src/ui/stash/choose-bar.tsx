import { lazy, Suspense, useEffect, useState } from "react";
import { go } from "../app/navigate.ts";
import { Button } from "../parts/index.ts";
import { findWords as words } from "../words/find.ts";
import { format } from "../words/index.ts";
import { printWords } from "../words/print.ts";
import styles from "./choose-bar.module.css";
import { chooseAll, chooseNone, endChoosing, useChoosing } from "./choosing.ts";
import { otherOfThese } from "./item-link.tsx";
import { sendOn } from "./print/sent-on.ts";
import type { Found } from "./view/find.ts";
import type { Known } from "./view/known.ts";

const Bulk = lazy(() => import("./bulk/bulk.tsx").then((module) => ({ default: module.Bulk })));

/** To where what is chosen goes into a file or on paper. */
function handOn(ids: ReadonlySet<string>): void {
  sendOn(ids);
  go(`${otherOfThese("save", "list")}&of=chosen`);
}

type Props = Readonly<{ known: readonly Known[]; found: Found }>;

/** Escape gives up what is chosen, and then choosing itself; not where a dialog or a list hears it first. */
function useEscape(on: boolean): void {
  useEffect(() => {
    if (!on) return undefined;
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Escape" || event.defaultPrevented || document.querySelector("dialog[open]")) return;
      if (useChoosing.getState().ids.size > 0) chooseNone();
      else endChoosing();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [on]);
}

/** While several things are being chosen: how many, and what can be done with all of them. */
export function ChooseBar({ known, found }: Props) {
  const on = useChoosing((state) => state.on);
  const ids = useChoosing((state) => state.ids);
  const [asked, setAsked] = useState<"change" | "remove" | null>(null);
  useEscape(on);
  if (!on) return null;
  const count = ids.size;
  const hidden = [...ids].filter((id) => !found.ids.has(id)).length;
  const items = known.flatMap(({ item }) => (ids.has(item.id) ? [item] : []));
  return (
    <section aria-label={words.choose} className={styles.bar}>
      <p role="status" className={styles.count}>
        {count === 0 ? words.chosenNone : words.chosen(format.count(count))}
        {hidden > 0 && ` ${words.hidden(format.count(hidden))}`}
      </p>
      <div className={styles.acts}>
        {count > 0 && (
          <>
            <Button kind="primary" onClick={() => setAsked("change")}>
              {words.change}
            </Button>
            <Button onClick={() => setAsked("remove")}>{words.remove}</Button>
            <Button kind="quiet" onClick={() => handOn(ids)}>
              {printWords.sendOn}
            </Button>
          </>
        )}
        {found.ids.size > 0 && (
          <Button kind="quiet" onClick={() => chooseAll(found.ids)}>
            {words.all(format.count(found.ids.size))}
          </Button>
        )}
        {count > 0 && (
          <Button kind="quiet" onClick={chooseNone}>
            {words.none}
          </Button>
        )}
        <Button kind="quiet" onClick={endChoosing}>
          {words.chooseEnd}
        </Button>
      </div>
      {asked !== null && (
        <Suspense fallback={null}>
          <Bulk act={asked} items={items} onClose={() => setAsked(null)} />
        </Suspense>
      )}
    </section>
  );
}
