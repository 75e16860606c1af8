import { useMemo } from "react";
import type { Workbook } from "../../engine/workbook/index.ts";
import { Link } from "../app/link.tsx";
import type { Target } from "../app/navigate.ts";
import { Section } from "../parts/index.ts";
import { deskWords } from "../words/desk.ts";
import styles from "./desk.module.css";
import { type PriceRow, pricesView } from "./view/prices.ts";

const words = deskWords.prices;

const targetOf = ({ kit }: PriceRow): Target =>
  kit === null ? { name: "markets" } : { name: "kit", id: kit, tab: "prices" };

/** Lines whose price is missing or only worked out, and rates that are old. */
export function Prices({ book, today }: Readonly<{ book: Workbook; today: string }>) {
  const view = useMemo(() => pricesView(book, today), [book, today]);
  return (
    <Section title={words.title}>
      {view.rows.length === 0 && <p className={styles.more}>{words.none}</p>}
      <ul>
        {view.rows.map((row) => (
          <li key={row.key} className={styles.row}>
            <Link to={targetOf(row)}>{row.name}</Link>
            <span className={styles.fact}>{row.fact}</span>
          </li>
        ))}
      </ul>
      {view.more.count > 0 && view.more.kit !== null && (
        <p className={styles.row}>
          <Link to={{ name: "kit", id: view.more.kit, tab: "prices" }}>{words.more(view.more.count)}</Link>
        </p>
      )}
    </Section>
  );
}
