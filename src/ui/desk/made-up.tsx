import { Link } from "../app/link.tsx";
import { type Column, Opened, Section, Table, useWhy, WhyButton } from "../parts/index.ts";
import { Swatch } from "../swatch/index.ts";
import { deskWords } from "../words/desk.ts";
import styles from "./made-up.module.css";
import type { MadeUpRow, MadeUpView } from "./view/made-up.ts";

const words = deskWords.coverage;

const columns: readonly Column<MadeUpRow>[] = [
  {
    key: "kit",
    head: words.kit,
    names: true,
    width: "30%",
    cell: (row) => (
      <span>
        <Link to={{ name: "kit", id: row.id, tab: "contents" }} className={styles.name}>
          {row.name}
        </Link>
        {row.facts.map((fact) => (
          <span key={fact} className={styles.fact}>
            {fact}
          </span>
        ))}
      </span>
    ),
  },
  {
    key: "colours",
    head: words.colours,
    stacked: "alone",
    cell: (row) => (
      <span className={styles.swatches}>
        {row.swatches.map((item) => (
          <Swatch key={item.id} item={item} width={44} height={28} />
        ))}
      </span>
    ),
  },
  { key: "items", head: words.items, align: "end", cell: (row) => row.items },
  { key: "gaps", head: words.gaps, align: "end", cell: (row) => row.gaps },
  {
    key: "weakest",
    head: words.weakest,
    cell: (row) => (
      <span className={styles.weakest}>
        {row.weakest} <span className={styles.pale}>{row.weakestFigure}</span>
      </span>
    ),
  },
  {
    key: "figure",
    head: words.figure,
    align: "end",
    cell: (row) => <span className={styles.figure}>{row.figure}</span>,
  },
];

/** The kits that the stash would make up best. */
export function MadeUp({ view }: Readonly<{ view: MadeUpView }>) {
  const why = useWhy();
  return (
    <Section
      title={words.title}
      aside={<WhyButton why={why} label={words.whyLabel} about={words.whyAbout} />}
      act={<Link to={{ name: "kits" }}>{words.all(view.all)}</Link>}
    >
      <Opened why={why}>
        <p className={styles.why}>
          {words.why} {view.hidden > 0 && words.hidden(view.hidden)}
        </p>
      </Opened>
      <Table caption={words.title} columns={columns} rows={view.rows} keyOf={(row) => row.id} />
    </Section>
  );
}
