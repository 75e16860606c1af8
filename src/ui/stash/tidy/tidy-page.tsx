import { type ReactNode, useMemo } from "react";
import { useBook } from "../../../store/index.ts";
import { useAddressValue } from "../../app/navigate.ts";
import { today } from "../../kits/today.ts";
import { ButtonLink, Page } from "../../parts/index.ts";
import { words as common, format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { tidyWords as words } from "../../words/tidy.ts";
import { knownStash } from "../view/known.ts";
import { unusedSince, yearBefore } from "../view/unused.ts";
import { Doubles } from "./doubles.tsx";
import { Listing } from "./listing.tsx";
import { Many } from "./many.tsx";
import { isTidy, type Tidy, tidies, tidyAddress } from "./tidies.ts";

const body: Readonly<Record<Tidy, () => ReactNode>> = {
  doubles: () => <Doubles />,
  unused: () => <Unused />,
  many: () => <Many />,
  low: () => <Low />,
};

/** What the stash needs to stay right: doubles, what lies unused, what there is too much of, what runs low. */
export function TidyPage() {
  const [asked] = useAddressValue("tidy");
  const tidy = isTidy(asked) ? asked : "doubles";
  return (
    <Page
      place={common.places.stash}
      title={words.title}
      tabs={tidies.map((one) => ({ label: words.tabs[one], to: tidyAddress(one), current: one === tidy }))}
      margin={
        <ButtonLink kind="quiet" to={{ name: "stash" }}>
          {stashWords.back}
        </ButtonLink>
      }
      lead={words.leads[tidy]}
      leadMore={
        tidy === "unused" ? words.unusedSince(format.date(yearBefore(today()))) : words.leadsMore[tidy]
      }
    >
      {body[tidy]()}
    </Page>
  );
}

function Unused() {
  const book = useBook((state) => state.book);
  const unused = useMemo(() => knownStash(unusedSince(book, today())), [book]);
  return <Listing listed={unused} none={words.nones.unused} />;
}

function Low() {
  const stash = useBook((state) => state.book.stash);
  const worn = useMemo(() => {
    const known = knownStash(stash ?? []);
    return (["low", "empty", "dried"] as const).flatMap((state) =>
      known.filter(({ item }) => item.state === state),
    );
  }, [stash]);
  return <Listing listed={worn} none={words.nones.low} />;
}
