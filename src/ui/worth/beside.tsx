import { useMemo } from "react";
import { type Column, Section, Table } from "../parts/index.ts";
import { worthWords } from "../words/worth.ts";
import { borderTexts, cardText, type PassingRow, passingRows, passingText } from "./view/beside.ts";
import type { Scene } from "./view/scene.ts";
import styles from "./worth.module.css";

const words = worthWords.beside;

const columns: readonly Column<PassingRow>[] = [
  { key: "tier", head: words.tier, names: true, cell: (row) => row.name },
  { key: "list", head: words.list, cell: (row) => row.list },
  { key: "listPostage", head: words.listPostageLong, cell: (row) => row.listPostage },
  { key: "shop", head: words.shop, cell: (row) => row.shop },
  { key: "shopPostage", head: words.shopPostageLong, cell: (row) => row.shopPostage },
];

/** What stands beside the worth: when it has paid for itself, what the card says, and the border left out. */
export function Beside({ scene }: Readonly<{ scene: Scene }>) {
  const passing = useMemo(() => passingRows(scene), [scene]);
  const card = useMemo(() => cardText(scene), [scene]);
  const border = useMemo(() => borderTexts(scene), [scene]);
  return (
    <>
      {passing.length > 0 && (
        <Section title={words.title}>
          <p className={styles.sub}>{passingText(scene)}</p>
          <Table caption={words.caption} columns={columns} rows={passing} keyOf={(row) => row.id} />
        </Section>
      )}
      {border.length > 0 && (
        <Section title={words.borderTitle}>
          {border.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </Section>
      )}
      {card && (
        <Section title={words.cardTitle}>
          <p>{card}</p>
        </Section>
      )}
    </>
  );
}
