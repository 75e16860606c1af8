import { useMemo } from "react";
import { ButtonLink, Page } from "../parts/index.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import { stashAddress } from "./item-link.tsx";
import { ItemPanel } from "./item-panel.tsx";
import { useShowChosen } from "./use-show-chosen.ts";
import { itemView } from "./view/item.ts";
import type { Known } from "./view/known.ts";

export type PanelProps = Readonly<{
  known: Known;
  stash: readonly Known[];
  changing: boolean;
  onChanging: (id: string | null) => void;
}>;

/** The chosen item beside the rest of the stash. */
export function ChosenPanel({ known, stash, changing, onChanging }: PanelProps) {
  const view = useMemo(() => itemView(stash, known), [stash, known]);
  useShowChosen(known.item.id);
  return <ItemPanel item={known.item} view={view} changing={changing} onChanging={onChanging} />;
}

/** On a phone the chosen item has the page to itself. */
export function ItemPage({ known, stash, changing, onChanging }: PanelProps) {
  const view = useMemo(() => itemView(stash, known), [stash, known]);
  return (
    <Page
      place={common.places.stash}
      title={view.name}
      margin={
        <ButtonLink kind="quiet" to={stashAddress()}>
          {words.back}
        </ButtonLink>
      }
    >
      <ItemPanel item={known.item} view={view} untitled changing={changing} onChanging={onChanging} />
    </Page>
  );
}
