import { useMemo, useState } from "react";
import type { Kinship } from "../../../engine/supply/index.ts";
import { useBook } from "../../../store/index.ts";
import { useAddressValue } from "../../app/navigate.ts";
import { useAdding } from "../../app/use-adding.ts";
import { Band } from "../../kits/band.tsx";
import { Button, type Column, Empty, Section, Table } from "../../parts/index.ts";
import { offersIn } from "../../supply-form/index.ts";
import { format } from "../../words/index.ts";
import { kinWords as words } from "../../words/kin.ts";
import { OtherPage } from "../other-page.tsx";
import styles from "./kin.module.css";
import { KinForm } from "./kin-form.tsx";
import { NewKin } from "./new-kin.tsx";
import { type KinRow, kinRows } from "./view/rows.ts";

const none: readonly Kinship[] = [];

/** What is the same as what, also of products that nobody here owns. */
export function KinPage() {
  const book = useBook((state) => state.book);
  const [asked] = useAddressValue("kin");
  const [open, setOpen] = useState<string | null>(null);
  const kinships = book.kinships ?? none;
  const rows = useMemo(() => kinRows(kinships, book.stash ?? []), [kinships, book.stash]);
  const offers = useMemo(() => offersIn(book), [book]);
  const from = book.stash?.find(({ id }) => id === asked)?.supply ?? null;
  const adding = useAdding(words.add, from !== null);
  const add = (
    <Button kind={rows.length === 0 ? "primary" : "quiet"} onClick={adding.open} ref={adding.button}>
      {words.add}
    </Button>
  );
  return (
    <OtherPage words={words}>
      {adding.asked > 0 && (
        <div className={styles.new}>
          <Band>
            <NewKin asked={adding.asked} from={from} offers={offers} onClose={adding.close} />
          </Band>
        </div>
      )}
      {rows.length === 0 && adding.asked === 0 && (
        <Empty title={words.empty} act={add}>
          {words.emptyText}
        </Empty>
      )}
      {rows.length > 0 && (
        <Section
          title={words.known(format.count(rows.length), rows.length === 1)}
          act={adding.asked === 0 && add}
        >
          <Table
            caption={words.caption}
            columns={columnsFor(open, setOpen)}
            rows={rows}
            keyOf={({ kinship }) => kinship.id}
            opened={({ kinship }) =>
              kinship.id === open && (
                <KinForm kinship={kinship} offers={offers} onGone={() => setOpen(null)} />
              )
            }
          />
        </Section>
      )}
    </OtherPage>
  );
}

const side = ({ name, mine }: KinRow["one"]) => (
  <>
    {name}
    <span className={styles.heard}>{mine}</span>
  </>
);

const columnsFor = (open: string | null, setOpen: (id: string | null) => void): readonly Column<KinRow>[] => [
  { key: "one", head: words.one, names: true, cell: ({ one }) => side(one) },
  { key: "other", head: words.other, cell: ({ other }) => side(other) },
  {
    key: "how",
    head: words.columns.how,
    stacked: "alone",
    cell: ({ how, heard }) => (
      <>
        {how}
        {heard.map((text) => (
          <span key={text} className={styles.heard}>
            {text}
          </span>
        ))}
      </>
    ),
  },
  { key: "sure", head: words.columns.sure, cell: ({ sure }) => sure },
  {
    key: "change",
    head: words.change,
    headHidden: true,
    align: "end",
    stacked: "alone",
    cell: ({ kinship, one, other }) => (
      <Button
        kind="quiet"
        aria-expanded={kinship.id === open}
        onClick={() => setOpen(kinship.id === open ? null : kinship.id)}
      >
        {kinship.id === open ? words.close : words.change}
        <span className="visually-hidden">{words.about(words.and(one.name, other.name))}</span>
      </Button>
    ),
  },
];
