import { lazy, Suspense, useCallback, useDeferredValue, useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { type Act, useOffer } from "../app/acts.ts";
import { go, withAddressValue } from "../app/navigate.ts";
import { Button, Empty, Page } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { findWords } from "../words/find.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { startChoosing } from "./choosing.ts";
import { MarginFilters } from "./filters.tsx";
import { Gone } from "./gone.tsx";
import { otherActs, useOtherPage } from "./other-pages.ts";
import { Onwards } from "./save/onwards.tsx";
import { StashViews } from "./stash-views.tsx";
import { useAsked } from "./use-asked.ts";
import { useNarrow } from "./use-narrow.ts";
import { usePhrases } from "./use-phrases.ts";
import { useWarm } from "./use-warm.ts";
import type { Asked, Ticked } from "./view/asked.ts";
import { talliesOf } from "./view/counts.ts";
import { filtersOf } from "./view/filters.ts";
import { type Found, findIn } from "./view/find.ts";
import { type Known, knownStash } from "./view/known.ts";

const none: readonly never[] = [];

const viewActs: readonly Act[] = [
  { name: words.views.colour, fact: words.title, run: () => go(withAddressValue("view", null), "replace") },
  { name: words.views.list, fact: words.title, run: () => go(withAddressValue("view", "list"), "replace") },
  { name: findWords.choose, fact: words.title, run: startChoosing },
];

// What is not there at once, or not for everybody, comes when it is asked for: the stash stands sooner.
const AddToStash = lazy(() => import("./add.tsx").then((module) => ({ default: module.AddToStash })));
const ItemPage = lazy(() => import("./item-page.tsx").then((module) => ({ default: module.ItemPage })));

/** What is ticked, the same object for as long as the same is. */
function useTicked({ kind, place, state, tag, maker, line, traits, near }: Asked): Ticked {
  return useMemo(
    () => ({ kind, place, state, tag, maker, line, traits, near }),
    [kind, place, state, tag, maker, line, traits, near],
  );
}

/** What is found, a moment behind the keys, so that typing never waits for the stash to be searched. */
function useFound(known: readonly Known[], text: string, ticked: Ticked): Found {
  const asked = useDeferredValue(useMemo(() => ({ text, ...ticked }), [text, ticked]));
  const readPhrase = usePhrases(text.trim() !== "");
  return useMemo(() => findIn(known, asked, readPhrase), [known, asked, readPhrase]);
}

type Props = Readonly<{ chosen: string | null }>;

/** The stash, or what else is done at its address. */
export function StashScreen({ chosen }: Props) {
  const OtherPage = useOtherPage();
  if (!OtherPage || chosen !== null) return <WholeStash chosen={chosen} />;
  return (
    <Suspense fallback={null}>
      <OtherPage />
    </Suspense>
  );
}

/** Everything owned: found, added to, and each thing put right; `chosen` is the one looked at. */
function WholeStash({ chosen }: Props) {
  const stash = useBook((state) => state.book.stash) ?? none;
  const known = useMemo(() => knownStash(stash), [stash]);
  const tallies = useMemo(() => talliesOf(known), [known]);
  const state = useAsked();
  const ticked = useTicked(state.asked);
  const found = useFound(known, state.asked.text, ticked);
  const filters = useMemo(() => filtersOf(known, tallies, ticked), [known, tallies, ticked]);
  useWarm(known);
  // How often the form to add was asked for; with nothing there yet it is open from the start.
  const [added, setAdded] = useState(known.length === 0 ? 1 : 0);
  const adding = added > 0;
  const add = useCallback(() => setAdded((before) => before + 1), []);
  const [changing, setChanging] = useState<string | null>(null);
  const narrow = useNarrow();
  useOffer(useMemo(() => [{ name: actWords.addToStash, run: add }, ...otherActs, ...viewActs], [add]));
  const panel = useMemo(() => {
    const item = known.find((one) => one.item.id === chosen);
    return item
      ? { known: item, stash: known, changing: changing === chosen, onChanging: setChanging }
      : null;
  }, [known, chosen, changing]);

  if (chosen !== null && !panel) return <Gone />;
  if (panel && narrow) {
    return (
      <Suspense fallback={null}>
        <ItemPage {...panel} />
      </Suspense>
    );
  }
  return (
    <Page
      place={common.places.stash}
      title={words.title}
      acts={known.length > 0 && <Onwards />}
      margin={known.length > 0 && <MarginFilters tallies={tallies} filters={filters} onTick={state.tick} />}
    >
      {adding && (
        <Suspense fallback={null}>
          <AddToStash asked={added} onDone={() => setAdded(0)} />
        </Suspense>
      )}
      {known.length === 0 ? (
        !adding && (
          <Empty
            title={words.empty}
            act={
              <Button kind="primary" onClick={add}>
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
          filters={filters}
          state={state}
          found={found}
          panel={panel}
          narrow={narrow}
          adding={adding}
          onAdd={add}
        />
      )}
    </Page>
  );
}
