import { useMemo } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { useBook } from "../../../store/index.ts";
import { ButtonLink } from "../../parts/index.ts";
import { kinWords as words } from "../../words/kin.ts";
import { otherAddress } from "../item-link.tsx";
import styles from "./kin.module.css";
import { kinOf } from "./view/rows.ts";

/** What a thing is the same as by the links of products, owned or not, and the way to say more of them. */
export function KinOfItem({ item }: Readonly<{ item: StashItem }>) {
  const kinships = useBook((state) => state.book.kinships);
  const kin = useMemo(() => kinOf(item.supply, kinships ?? []), [item.supply, kinships]);
  return (
    <div>
      {kin.length > 0 && (
        <ul>
          {kin.map((text) => (
            <li key={text} className={styles.heard}>
              {text}
            </li>
          ))}
        </ul>
      )}
      <ButtonLink kind="quiet" to={otherAddress("kin", item.id)}>
        {words.fromItem}
      </ButtonLink>
    </div>
  );
}
