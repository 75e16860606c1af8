import { useState } from "react";
import type { Market } from "../../engine/worth/index.ts";
import { useBook } from "../../store/index.ts";
import { useAdding } from "../app/use-adding.ts";
import { Band } from "../kits/band.tsx";
import { classes } from "../parts/classes.ts";
import { Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { marketsWords } from "../words/markets.ts";
import { ChangeButton } from "./change-button.tsx";
import { MarketForm } from "./market-form.tsx";
import styles from "./markets.module.css";
import { NewMarket } from "./new-market.tsx";
import { ruleTexts } from "./view/rules.ts";

const words = marketsWords.markets;

type Row = Readonly<{ market: Market; rules: readonly string[] }>;

/** Every market with its currency and, in sentences, what its border charges. */
export function MarketList() {
  const book = useBook((state) => state.book);
  const [open, setOpen] = useState<string | null>(null);
  const rows = (book.markets ?? []).map((market): Row => ({ market, rules: ruleTexts(market, book) }));
  const adding = useAdding(actWords.addMarket);
  const add = (
    <Button kind={rows.length === 0 ? "primary" : "quiet"} onClick={adding.open} ref={adding.button}>
      {words.add}
    </Button>
  );
  return (
    <Section title={words.title} act={adding.asked === 0 && rows.length > 0 && add}>
      {rows.length === 0 && adding.asked === 0 && (
        <Empty title={words.empty} act={add}>
          {words.emptyText}
        </Empty>
      )}
      {adding.asked > 0 && (
        <Band>
          <NewMarket asked={adding.asked} onClose={adding.close} />
        </Band>
      )}
      {rows.length > 0 && (
        <>
          <Table
            caption={words.caption}
            columns={columnsFor(open, setOpen)}
            rows={rows}
            keyOf={({ market }) => market.id}
            opened={({ market }) =>
              market.id === open && <MarketForm market={market} onGone={() => setOpen(null)} />
            }
          />
          <p className={styles.caution}>{words.caution}</p>
        </>
      )}
    </Section>
  );
}

const columnsFor = (open: string | null, setOpen: (id: string | null) => void): readonly Column<Row>[] => [
  { key: "name", head: words.name, names: true, cell: ({ market }) => market.name, width: "18%" },
  { key: "currency", head: words.currency, cell: ({ market }) => market.currency, width: "12%" },
  {
    key: "border",
    head: words.border,
    stacked: "alone",
    cell: ({ market, rules }) => <Rules texts={rules} changing={market.id === open} />,
  },
  {
    key: "change",
    head: marketsWords.change,
    headHidden: true,
    align: "end",
    stacked: "alone",
    cell: ({ market }) => (
      <ChangeButton
        open={market.id === open}
        about={market.name}
        onToggle={() => setOpen(market.id === open ? null : market.id)}
      />
    ),
  },
];

type RulesProps = Readonly<{ texts: readonly string[]; changing: boolean }>;

/** While a rule is changed its sentence keeps room to grow, so that the fields under it stay where they are. */
function Rules({ texts, changing }: RulesProps) {
  if (texts.length === 0) return <span className={styles.fact}>{words.noRules}</span>;
  return (
    <ul className={classes(styles.rules, changing && styles.roomy)}>
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
