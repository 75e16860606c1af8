import { useDeferredValue, useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { useOffer } from "../app/acts.ts";
import { Button, Empty, Page } from "../parts/index.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { AddToStash } from "./add.tsx";
import { MarginFilters } from "./filters.tsx";
import { Gone, ItemPage } from "./item-page.tsx";
import { StashViews } from "./stash-views.tsx";
import { useAsked } from "./use-asked.ts";
import { useNarrow } from "./use-narrow.ts";
import { useShowChosen } from "./use-show-chosen.ts";
import { talliesOf } from "./view/counts.ts";
import { findIn } from "./view/find.ts";
import { knownStash } from "./view/known.ts";

const none: readonly never[] = [];

/** Everything owned: found, added to, and each thing put right; `chosen` is the one looked at. */
export function StashScreen({ chosen }: Readonly<{ chosen: string | null }>) {
  const stash = useBook((state) => state.book.stash) ?? none;
  const known = useMemo(() => knownStash(stash), [stash]);
  const tallies = useMemo(() => talliesOf(known), [known]);
  const state = useAsked();
  const asked = useDeferredValue(state.asked.text);
  const { kind, place, state: worn } = state.asked;
  const found = useMemo(
    () => findIn(known, { text: asked, kind, place, state: worn }),
    [known, asked, kind, place, worn],
  );
  const [adding, setAdding] = useState(known.length === 0);
  const [changing, setChanging] = useState<string | null>(null);
  const narrow = useNarrow();
  const offered = useMemo(() => [{ name: words.addAct, run: () => setAdding(true) }], []);
  useOffer(offered);
  useShowChosen(narrow ? null : chosen);
  const item = chosen === null ? null : (known.find((one) => one.item.id === chosen) ?? null);

  if (chosen !== null && !item) return <Gone />;
  const panel = item && {
    known: item,
    stash: known,
    changing: changing === item.item.id,
    onChanging: setChanging,
  };
  if (panel && narrow) return <ItemPage {...panel} />;
  return (
    <Page
      place={common.places.stash}
      title={words.title}
      margin={known.length > 0 && <MarginFilters tallies={tallies} state={state} />}
    >
      {adding && <AddToStash onDone={() => setAdding(false)} />}
      {known.length === 0 ? (
        !adding && (
          <Empty
            title={words.empty}
            act={
              <Button kind="primary" onClick={() => setAdding(true)}>
                {words.emptyAct}
              </Button>
            }
          >
            {words.emptyText}
          </Empty>
        )
      ) : (
        <StashViews
          known={known}
          tallies={tallies}
          state={state}
          found={found}
          panel={panel}
          narrow={narrow}
          adding={adding}
          onAdd={() => setAdding(true)}
        />
      )}
    </Page>
  );
}
