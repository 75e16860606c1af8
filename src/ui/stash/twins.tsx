import { lazy, Suspense } from "react";
import type { StashItem } from "../../engine/supply/index.ts";
import { useBook } from "../../store/index.ts";
import { doAct } from "../app/do-act.ts";
import { Button, Chooser } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { stashWords } from "../words/stash.ts";
import { ItemLink } from "./item-link.tsx";
import styles from "./twins.module.css";
import { addTwin, removeTwin, twinOptions, twinsOf } from "./view/twins.ts";

const words = stashWords.item;

const Kin = lazy(() => import("./kin/kin-of-item.tsx").then((module) => ({ default: module.KinOfItem })));

/** The same product under other labels, of those on the shelf. */
export function Twins({ item }: Readonly<{ item: StashItem }>) {
  const stash = useBook((state) => state.book.stash) ?? [];
  return (
    <fieldset className={styles.twins}>
      <legend className={styles.legend}>{words.twins}</legend>
      {twinsOf(item, stash).map((twin) => (
        <div key={twin.id} className={styles.twin}>
          <ItemLink id={twin.id} stays className={styles.link}>
            <Swatch item={twin} width={44} height={30} />
            {[twin.supply.name, twin.supply.maker].filter(Boolean).join(", ")}
          </ItemLink>
          <Button
            kind="quiet"
            aria-label={words.twinRemoveNamed(twin.supply.name)}
            onClick={() => void doAct(removeTwin(item, twin), null)}
          >
            {words.twinRemove}
          </Button>
        </div>
      ))}
      <Chooser
        label={words.twinsAdd}
        hint={words.twinsHint}
        value={null}
        options={twinOptions(item, stash)}
        onValue={(other) => other !== null && void doAct(addTwin(item, other), null)}
      />
      <Suspense fallback={null}>
        <Kin item={item} />
      </Suspense>
    </fieldset>
  );
}
