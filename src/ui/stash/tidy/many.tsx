import { useMemo, useState } from "react";
import { hexFromLab } from "../../../engine/colour/index.ts";
import { type Alike, manyAlike } from "../../../engine/supply/index.ts";
import { stockOf, useBook } from "../../../store/index.ts";
import { Button, Empty } from "../../parts/index.ts";
import { usePrinting } from "../../parts/use-printing.ts";
import { plainName } from "../../words/engine/colour.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { tidyWords as words } from "../../words/tidy.ts";
import { Things } from "./things.tsx";
import styles from "./tidy.module.css";

/** How many groups are drawn at once. */
const step = 30;

/** Colours owned many times over, each group with all its things. */
export function Many() {
  const stash = useBook((state) => state.book.stash);
  const groups = useMemo(() => manyAlike(stash ?? []), [stash]);
  const [limit, setLimit] = useState(step);
  const shown = usePrinting() ? groups : groups.slice(0, limit);
  if (groups.length === 0) return <Empty title={words.nones.many} />;
  return (
    <>
      <p role="status" className={styles.count}>
        {words.groups(format.count(groups.length), groups.length === 1)}
      </p>
      <ul className={styles.groups}>
        {shown.map((group) => (
          <Group key={group.middle.id} group={group} />
        ))}
      </ul>
      {groups.length > shown.length && (
        <Button kind="quiet" onClick={() => setLimit(limit + step)}>
          {words.moreGroups(format.count(groups.length - shown.length))}
        </Button>
      )}
    </>
  );
}

function Group({ group: { items, middle, lab } }: Readonly<{ group: Alike }>) {
  const makers = new Set(items.flatMap(({ supply }) => supply.maker ?? [])).size;
  const pieces = items.reduce((sum, item) => sum + stockOf(item, "owned"), 0);
  const kind = stashWords.kinds[middle.supply.family];
  return (
    <li className={styles.group}>
      <h2 className={styles.groupHead}>
        {words.alike(format.count(items.length), kind, plainName(lab))}{" "}
        <span className={styles.pale}>
          {[
            makers > 1 ? words.makers(makers) : "",
            pieces > items.length ? words.pieces(format.count(pieces)) : "",
            hexFromLab(lab),
          ]
            .filter(Boolean)
            .join(", ")}
        </span>
      </h2>
      <Things
        items={items}
        swatch={{ width: 44, height: 30 }}
        facts={(item) => [item.supply.maker, item.place, words.owned(format.count(stockOf(item, "owned")))]}
      />
    </li>
  );
}
