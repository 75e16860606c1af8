import { lazy, Suspense, useId, useMemo } from "react";
import type { StashItem } from "../../engine/supply/index.ts";
import { addStashItem, editStashItem, newId, removeStashItem, useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { doAct } from "../app/do-act.ts";
import { go } from "../app/navigate.ts";
import { Acts, Button } from "../parts/index.ts";
import { SupplyForm } from "../supply-form/index.ts";
import { stashWords } from "../words/stash.ts";
import { ItemFacts } from "./item-facts.tsx";
import { ItemFields } from "./item-fields.tsx";
import { goStaying, itemAddress, stashAddress } from "./item-link.tsx";
import styles from "./item-panel.module.css";
import type { ItemView } from "./view/item.ts";
import { anotherLike } from "./view/new-items.ts";

const words = stashWords.item;

const Photos = lazy(async () => ({ default: (await import("./photos/photos.tsx")).Photos }));

type Props = Readonly<{
  item: StashItem;
  view: ItemView;
  /** Its name stands above already, as the page's title. */
  untitled?: boolean;
  /** Whether what it is can be changed just now. */
  changing: boolean;
  onChanging: (id: string | null) => void;
}>;

/** One thing of the stash: what it is, what is near it, and how one has it. */
export function ItemPanel({ item, view, untitled = false, changing, onChanging }: Props) {
  const titleId = useId();
  const Sub = untitled ? "h2" : "h3";
  return (
    <section aria-labelledby={untitled ? undefined : titleId} aria-label={untitled ? view.name : undefined}>
      <ItemFacts item={item} view={view} titleId={untitled ? null : titleId} />
      <Sub className={styles.head}>{words.mine}</Sub>
      <ItemFields key={item.id} item={item} />
      {changing && (
        <>
          <Sub className={styles.head}>{words.what}</Sub>
          <SupplyForm
            supply={item.supply}
            onChange={(path, value) => void doAct(editStashItem(item, ["supply", ...path], value), null)}
          />
        </>
      )}
      <Suspense fallback={null}>
        <Photos key={item.id} item={item} level={untitled ? 2 : 3} />
      </Suspense>
      <ItemActs item={item} changing={changing} onChanging={onChanging} />
    </section>
  );
}

type ActsProps = Pick<Props, "item" | "changing" | "onChanging">;

/** What can be done with a thing as a whole. */
function actsOn({ item, changing, onChanging }: ActsProps) {
  const name = item.supply.name;
  const another = () => {
    const id = newId("st-", useBook.getState().book.stash);
    void doAct(addStashItem(anotherLike(item, id)), words.anotherDone(name));
    onChanging(id);
    goStaying(itemAddress(id), null);
  };
  const remove = () => {
    const draft = removeStashItem(useBook.getState().book, item);
    go(stashAddress());
    void doAct(draft, words.removed(name));
  };
  return [
    { name: changing ? words.changeClose : words.change, run: () => onChanging(changing ? null : item.id) },
    { name: words.another, run: another },
    { name: words.remove, run: remove },
  ] as const;
}

function ItemActs({ item, changing, onChanging }: ActsProps) {
  const acts = useMemo(() => actsOn({ item, changing, onChanging }), [item, changing, onChanging]);
  const [change, ...others] = acts;
  useOffer(acts);
  return (
    <div className={styles.acts}>
      <Acts>
        <Button onClick={change.run} aria-expanded={changing}>
          {change.name}
        </Button>
        {others.map(({ name, run }) => (
          <Button key={name} kind="quiet" onClick={run}>
            {name}
          </Button>
        ))}
      </Acts>
    </div>
  );
}
