import { useEffect, useMemo } from "react";
import { Acts, Button, Empty } from "../../parts/index.ts";
import { findWords } from "../../words/find.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { ChooseBar } from "../choose-bar.tsx";
import { endChoosing, startChoosing, useChoosing } from "../choosing.ts";
import { StashList } from "../list.tsx";
import type { Found } from "../view/find.ts";
import type { Known } from "../view/known.ts";
import styles from "./tidy.module.css";

type Props = Readonly<{ listed: readonly Known[]; none: string }>;

/** Things of the stash in an order of their own, of which several can be chosen and changed. */
export function Listing({ listed, none }: Props) {
  const choosing = useChoosing(({ on }) => on);
  const found: Found = useMemo(
    () => ({
      ids: new Set(listed.map(({ item }) => item.id)),
      apart: null,
      asked: true,
      named: null,
      leftAside: [],
    }),
    [listed],
  );
  useEffect(() => endChoosing, []);
  if (listed.length === 0) return <Empty title={none} />;
  return (
    <>
      <div className={styles.head}>
        <p role="status">{stashWords.things(format.count(listed.length), listed.length === 1)}</p>
        {!choosing && (
          <Acts>
            <Button kind="quiet" onClick={startChoosing}>
              {findWords.choose}
            </Button>
          </Acts>
        )}
      </div>
      <ChooseBar known={listed} found={found} />
      <StashList listed={listed} apart={null} chosen={null} stays={false} panel={null} />
    </>
  );
}
