import { useEffect, useState } from "react";
import type { NotHeld } from "../../../engine/intake/index.ts";
import type { StashItem } from "../../../engine/supply/index.ts";
import { ButtonLink, Section } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { saveWords as words } from "../../words/save.ts";
import styles from "./save.module.css";
import type { ListFile } from "./use-list-file.ts";

type Props = Readonly<{ items: readonly StashItem[]; lookAt: ListFile["lookAt"] }>;

function saidOf({ pictures, others }: NotHeld): readonly string[] {
  return [
    pictures > 0 ? words.pictures(format.count(pictures), pictures === 1) : "",
    others > 0 ? words.others(format.count(others), others === 1) : "",
  ].filter((text) => text !== "");
}

/** What of the things is not in the list, and where it is kept. */
export function NotInIt({ items, lookAt }: Props) {
  const [found, setFound] = useState<NotHeld | null>(null);
  useEffect(() => {
    let wanted = true;
    setFound(null);
    void lookAt(items).then((held) => wanted && setFound(held));
    return () => {
      wanted = false;
    };
  }, [items, lookAt]);
  const said = found ? saidOf(found) : [];
  return (
    <Section title={words.held}>
      <p role="status">
        {found === null && words.looking}
        {found !== null && said.length === 0 && words.whole}
        {said.length > 0 && [...said, words.copy].join(" ")}
      </p>
      {said.length > 0 && (
        <p className={styles.act}>
          <ButtonLink kind="quiet" to={{ name: "keep-safe" }}>
            {words.toCopy}
          </ButtonLink>
        </p>
      )}
    </Section>
  );
}
