import { ButtonLink, Empty, Page } from "../parts/index.ts";
import { words as common } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";

/** An item that is not in the stash. */
export function Gone() {
  return (
    <Page place={common.places.stash} title={words.gone}>
      <Empty
        title={words.goneText}
        act={
          <ButtonLink kind="primary" to={{ name: "stash" }}>
            {words.goneAct}
          </ButtonLink>
        }
      />
    </Page>
  );
}
