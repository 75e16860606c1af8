import { useAddressValue, withAddressValue } from "../app/navigate.ts";
import { type Column, DateText, MoneyText, Nearness, Section, Table, Tabs } from "../parts/index.ts";
import styles from "./parts-page.module.css";
import { sheet } from "./sheet-words.ts";

const texts = sheet.figures;

type Row = (typeof texts.rows)[number];

const columns: readonly Column<Row>[] = [
  { key: "name", head: texts.tier, names: true, cell: (row) => row.name },
  { key: "costs", head: texts.costs, align: "end", cell: (row) => <Sek amount={row.costs} /> },
  { key: "gain", head: texts.gain, align: "end", cell: (row) => <Sek amount={row.gain} sign="always" /> },
  {
    key: "says",
    head: texts.says,
    headHidden: true,
    follows: true,
    stacked: "alone",
    cell: (row) => row.says,
  },
  {
    key: "abroad",
    head: texts.abroad,
    align: "end",
    cell: (row) => <MoneyText bare money={{ amount: row.abroad, currency: "JPY" }} />,
  },
];

const Sek = ({ amount, sign }: Readonly<{ amount: string; sign?: "always" }>) => (
  <MoneyText bare money={{ amount, currency: "SEK" }} {...(sign === undefined ? {} : { sign })} />
);

/** Tabs, a table with its total, nearness, and amounts of several currencies under each other. */
export function Figures() {
  return (
    <Section title={texts.title} note={texts.note}>
      <MarketTabs />
      <Table
        caption={texts.caption}
        columns={columns}
        rows={texts.rows}
        keyOf={(row) => row.key}
        current="season"
        opened={(row) => (row.key === "season" ? texts.openedRow : null)}
        total={{ name: texts.together, costs: <Sek amount="904.06" /> }}
      />
      <div className={styles.figures}>
        <Nearness figure={91} words={texts.words.very} />
        <Nearness figure={54} words={texts.words.pinch} />
        <Nearness figure={null} words={texts.words.gap} />
        <Nearness figure={100} words={texts.words.very} layout="line" />
        <Mixed />
        <p>
          {texts.day} <DateText date="2026-05-07" kind="long" />
          <br />
          {texts.month} <DateText date="2026-04" kind="month" />
          <br />
          {texts.looked} <DateText date="2026-05-02" />, <DateText date="2026-05-03" kind="short" />
        </p>
      </div>
    </Section>
  );
}

function MarketTabs() {
  const [market] = useAddressValue("market");
  return (
    <Tabs
      kind="view"
      label={texts.views}
      tabs={sheet.acts.markets.map(({ value, label }, index) => ({
        label,
        more: ["SEK", "EUR", "JPY"][index],
        to: withAddressValue("market", value),
        current: value === (market ?? "SE"),
      }))}
    />
  );
}

function Mixed() {
  const amounts = [
    { amount: "1234.5", currency: "EUR" },
    { amount: "5475", currency: "JPY" },
    { amount: "3.25", currency: "KWD" },
  ];
  return (
    <div className={styles.mixed}>
      <p className={styles.fact}>{texts.mixedLine}</p>
      {amounts.map((money) => (
        <p key={money.currency}>
          <MoneyText money={money} room={3} />
        </p>
      ))}
    </div>
  );
}
