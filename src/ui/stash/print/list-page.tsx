import { useMemo } from "react";
import { useAddressValue } from "../../app/navigate.ts";
import { Acts, Button, type Column, Page, Select, Table } from "../../parts/index.ts";
import { usePrinting } from "../../parts/use-printing.ts";
import { words as common, format } from "../../words/index.ts";
import { printWords as words } from "../../words/print.ts";
import { Elsewhere } from "./elsewhere.tsx";
import styles from "./list.module.css";
import { useThings } from "./use-things.ts";
import { type By, firstRows, type ListGroup, type ListRow, listGroups } from "./view/list.ts";
import { WhichThings } from "./which.tsx";

/** How many rows are drawn on a screen: enough to see how the sheet will look. */
const rowsShown = 40;

/** The stash as a list on paper: each thing with a box to tick at the shelf. */
export function ListPage() {
  const things = useThings();
  const [asked, setBy] = useAddressValue("by");
  const by: By = asked === "maker" ? "maker" : "place";
  const { items } = things;
  const groups = useMemo(() => listGroups(items, by), [items, by]);
  const isPrinting = usePrinting();
  const shown = isPrinting ? groups : firstRows(groups, rowsShown);
  const more = isPrinting ? 0 : items.length - rowsShown;
  return (
    <Page
      place={common.places.stash}
      title={words.list.title}
      lead={words.list.lead}
      leadMore={words.list.sum(format.count(items.length), items.length === 1)}
      margin={<Elsewhere value="chart" label={words.chartAct} />}
    >
      <div className="screen-only">
        <div className={styles.asked}>
          <WhichThings things={things} />
          <div className={styles.fields}>
            <Select
              label={words.list.by}
              value={by}
              options={[
                { value: "place", label: words.list.place },
                { value: "maker", label: words.list.maker },
              ]}
              onValue={(next) => setBy(next === "place" ? null : next)}
            />
          </div>
          <Acts>
            <Button
              kind="primary"
              notNow={items.length === 0 && (things.found ? words.nothing : words.nothingYet)}
              onClick={() => print()}
            >
              {words.print}
            </Button>
          </Acts>
        </div>
      </div>
      {items.length === 0 && <p>{things.found ? words.nothing : words.nothingYet}</p>}
      <div className={styles.groups}>
        {shown.map((group) => (
          <Group key={group.key} group={group} by={by} />
        ))}
      </div>
      {more > 0 && <p className={styles.more}>{words.more(format.count(more), more === 1)}</p>}
    </Page>
  );
}

const Group = ({ group, by }: Readonly<{ group: ListGroup; by: By }>) => (
  <div className={styles.group}>
    <h2 className={styles.above}>{group.title}</h2>
    <Table caption={group.title} columns={columnsOf(group, by)} rows={group.rows} keyOf={({ id }) => id} />
  </div>
);

const columnsOf = ({ title }: ListGroup, by: By): readonly Column<ListRow>[] => [
  {
    key: "name",
    head: <span className={styles.title}>{title}</span>,
    names: true,
    width: "42%",
    cell: (row) => (
      <span className={styles.thing}>
        <span className={styles.box} aria-hidden="true" />
        <span>
          {row.name}
          <span className={styles.facts}>{row.facts}</span>
        </span>
      </span>
    ),
  },
  { key: "code", head: words.list.code, width: "10%", cell: ({ code }) => code },
  { key: "where", head: words.list.where[by], width: "26%", cell: ({ where }) => where },
  { key: "have", head: words.list.have, width: "10%", cell: ({ have }) => have },
  { key: "state", head: words.list.state, width: "12%", cell: ({ state }) => state },
];
