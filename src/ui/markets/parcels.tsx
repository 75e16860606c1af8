import { useState } from "react";
import { useBook } from "../../store/index.ts";
import { useAdding } from "../app/use-adding.ts";
import { Band } from "../kits/band.tsx";
import { Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { marketsWords } from "../words/markets.ts";
import { ChangeButton } from "./change-button.tsx";
import styles from "./markets.module.css";
import { NewParcel } from "./new-parcel.tsx";
import { ParcelForm } from "./parcel-form.tsx";
import { type ParcelRow, parcelCounts, parcelRows } from "./view/lists.ts";

const words = marketsWords.parcels;

/** Parcels that really came, and what the border took. */
export function Parcels() {
  const book = useBook((state) => state.book);
  const [open, setOpen] = useState<string | null>(null);
  const rows = parcelRows(book);
  const counts = parcelCounts(book);
  const adding = useAdding(actWords.addParcel);
  const add = (
    <Button kind="quiet" onClick={adding.open} ref={adding.button}>
      {words.add}
    </Button>
  );
  return (
    <Section title={words.title} act={adding.asked === 0 && rows.length > 0 && add}>
      {rows.length > 0 && <p className={styles.text}>{[words.text, ...counts].join(" ")}</p>}
      {adding.asked > 0 && (
        <Band>
          <NewParcel asked={adding.asked} onClose={adding.close} />
        </Band>
      )}
      {rows.length === 0 && adding.asked === 0 && (
        <Empty title={words.empty} act={add}>
          {words.emptyText}
        </Empty>
      )}
      {rows.length > 0 && (
        <Table
          caption={words.caption}
          columns={columnsFor(open, setOpen)}
          rows={rows}
          keyOf={({ parcel }) => parcel.id}
          opened={({ parcel }) =>
            parcel.id === open && <ParcelForm parcel={parcel} onGone={() => setOpen(null)} />
          }
        />
      )}
    </Section>
  );
}

const columnsFor = (
  open: string | null,
  setOpen: (id: string | null) => void,
): readonly Column<ParcelRow>[] => [
  { key: "way", head: words.way, names: true, cell: ({ way }) => way },
  { key: "date", head: words.date, cell: ({ date }) => date },
  { key: "value", head: words.value, align: "end", cell: ({ value }) => value },
  { key: "charged", head: words.charged, align: "end", cell: ({ charged }) => charged },
  { key: "note", head: words.note, follows: true, stacked: "alone", cell: ({ note }) => note },
  {
    key: "change",
    head: marketsWords.change,
    headHidden: true,
    align: "end",
    stacked: "alone",
    cell: ({ parcel, way, date }) => (
      <ChangeButton
        open={parcel.id === open}
        about={`${way}, ${date}`}
        onToggle={() => setOpen(parcel.id === open ? null : parcel.id)}
      />
    ),
  },
];
