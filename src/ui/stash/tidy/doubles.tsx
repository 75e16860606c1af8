import { useMemo, useState } from "react";
import { doublesIn, type Doubles as Group } from "../../../engine/supply/index.ts";
import { keepItemsApart, mergeStashItems, useBook } from "../../../store/index.ts";
import { doAct, doLargeAct } from "../../app/do-act.ts";
import { Acts, Button, Empty } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { tidyWords as words } from "../../words/tidy.ts";
import { factsText, placeOf } from "../view/known.ts";
import { byFullness, type Choices, differences, mergedItem } from "../view/merge.ts";
import { haveText } from "../view/rows.ts";
import { partsOf } from "../view/unused.ts";
import { Differing } from "./differing.tsx";
import { Things } from "./things.tsx";
import styles from "./tidy.module.css";

/** How many groups are drawn at once. */
const step = 20;

/** Groups of things that may be one, to be joined or kept apart. */
export function Doubles() {
  const stash = useBook((state) => state.book.stash);
  const groups = useMemo(() => doublesIn(stash ?? []), [stash]);
  const [limit, setLimit] = useState(step);
  if (groups.length === 0) return <Empty title={words.nones.doubles} />;
  return (
    <>
      <p role="status" className={styles.count}>
        {words.groups(format.count(groups.length), groups.length === 1)}
      </p>
      <ul className={styles.groups}>
        {groups.slice(0, limit).map((group) => (
          <Pair key={group.items.map(({ id }) => id).join(" ")} group={group} />
        ))}
      </ul>
      {groups.length > limit && (
        <Button kind="quiet" onClick={() => setLimit(limit + step)}>
          {words.moreGroups(format.count(groups.length - limit))}
        </Button>
      )}
    </>
  );
}

const whyText = ({ why, apart }: Group): string =>
  why === "nearly" && apart !== null ? words.nearlyApart(format.number(apart, 1, true)) : words.whys[why];

function Pair({ group }: Readonly<{ group: Group }>) {
  const remakes = useBook((state) => state.book.remakes);
  const items = useMemo(() => byFullness(group.items, partsOf({ remakes: remakes ?? [] })), [group, remakes]);
  const [choices, setChoices] = useState<Choices>(new Map());
  const differing = useMemo(() => differences(items), [items]);
  const [first, ...others] = items;
  if (!first) return null;
  const merge = () => {
    const { book } = useBook.getState();
    void doLargeAct(mergeStashItems(book, mergedItem([first, ...others], choices), others));
  };
  const isOneFamily = others.every(({ supply }) => supply.family === first.supply.family);
  return (
    <li className={styles.group}>
      <h2 className={styles.groupHead}>
        {first.supply.name} <span className={styles.pale}>{whyText(group)}</span>
      </h2>
      <Things
        items={items}
        swatch={{ width: 62, height: 44 }}
        facts={(item) => [
          item.supply.maker,
          item.supply.line,
          item.supply.code,
          factsText(item.supply),
          placeOf(item),
          words.owned(haveText(item)),
        ]}
      />
      {differing.map((difference) => (
        <Differing
          key={difference.field}
          family={first.supply.family}
          difference={difference}
          chosen={choices.get(difference.field) ?? 0}
          onChosen={(option) => setChoices(new Map([...choices, [difference.field, option]]))}
        />
      ))}
      <p className={styles.told}>{isOneFamily ? words.mergeText : words.otherKinds}</p>
      <Acts>
        {isOneFamily && (
          <Button kind="secondary" onClick={merge} aria-label={words.mergeNamed(first.supply.name)}>
            {words.merge(items.length)}
          </Button>
        )}
        <Button
          kind="quiet"
          onClick={() => void doAct(keepItemsApart(items))}
          aria-label={words.apartNamed(first.supply.name)}
        >
          {words.apart}
        </Button>
      </Acts>
    </li>
  );
}
