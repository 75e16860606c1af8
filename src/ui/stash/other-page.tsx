import type { ReactNode } from "react";
import type { Target } from "../app/navigate.ts";
import { ButtonLink, Page } from "../parts/index.ts";
import { words as common } from "../words/index.ts";
import { stashWords } from "../words/stash.ts";

type Props = Readonly<{
  /** How the page introduces itself. */
  words: Readonly<{ title: string; lead: string; leadMore: string; note: string }>;
  /** Where the way back leads; the whole stash unless said. */
  back?: Target;
  children: ReactNode;
}>;

/** The page of something else that is done with the stash, and the way back to it. */
export const OtherPage = ({ words, back = { name: "stash" }, children }: Props) => (
  <Page
    place={common.places.stash}
    title={words.title}
    lead={words.lead}
    leadMore={words.leadMore}
    note={words.note}
    margin={
      <ButtonLink kind="quiet" to={back}>
        {stashWords.back}
      </ButtonLink>
    }
  >
    {children}
  </Page>
);
