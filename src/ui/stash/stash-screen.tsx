import { Suspense, useCallback, useDeferredValue, useMemo, useState } from "react";
import { useBook } from "../../store/index.ts";
import { type Act, useOffer } from "../app/acts.ts";
import { go, withAddressValue } from "../app/navigate.ts";
import { Button, Empty, Page } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { AddToStash } from "./add.tsx";
import { MarginFilters } from "./filters.tsx";
import { Gone, ItemPage } from "./item-page.tsx";
import { otherActs, useOtherPage } from "./other-pages.ts";
import { Onwards } from "./save/onwards.tsx";
import { StashViews } from "./stash-views.tsx";
import { useAsked } from "./use-asked.ts";
import { useNarrow } from "./use-narrow.ts";
import { useShowChosen } from "./use-show-chosen.ts";
import { talliesOf } from "./view/counts.ts";
import { findIn } from "./view/find.ts";
import { knownStash } from "./view/known.ts";

const none: readonly never[] = [];

const viewActs: readonly Act[] = [
  { name: words.views.colour, fact: words.title, run: () => go(withAddressValue("view", null), "replace") },
  { name: words.views.list, fact: words.title, run: () => go(withAddressValue("view", "list"), "replace") },
];

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
  const asked = useDeferredValue(state.asked.text);
  const { kind, place, state: worn } = state.asked;
  const found = useMemo(
    () => findIn(known, { text: asked, kind, place, state: worn }),
    [known, asked, kind, place, worn],
  );
  // How often the form to add was asked for; with nothing there yet it is open from the start.
  const [added, setAdded] = useState(known.length === 0 ? 1 : 0);
  const adding = added > 0;
  const add = useCallback(() => setAdded((before) => before + 1), []);
  const [changing, setChanging] = useState<string | null>(null);
  const narrow = useNarrow();
  useOffer(useMemo(() => [{ name: actWords.addToStash, run: add }, ...otherActs, ...viewActs], [add]));
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
      acts={known.length > 0 && <Onwards />}
      margin={known.length > 0 && <MarginFilters tallies={tallies} state={state} />}
    >
      {adding && <AddToStash asked={added} onDone={() => setAdded(0)} />}
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
          tallies={tallies}
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
