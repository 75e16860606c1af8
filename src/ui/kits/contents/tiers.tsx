import { useMemo, useState } from "react";
import type { Kit } from "../../../engine/worth/index.ts";
import { useBook } from "../../../store/index.ts";
import { useAdding } from "../../app/use-adding.ts";
import { Button, type Column, Empty, Section, Table } from "../../parts/index.ts";
import { actWords } from "../../words/acts.ts";
import { kitsWords } from "../../words/kits.ts";
import { Band } from "../band.tsx";
import { type TierRow, tierRows } from "../view/tiers.ts";
import { NewTier } from "./new-tier.tsx";
import { TierForm } from "./tier-form.tsx";

const text = kitsWords.tiers;

/** The ways to subscribe that this kit came with, each opened to be changed. */
export function Tiers({ kit }: Readonly<{ kit: Kit }>) {
  const book = useBook((state) => state.book);
  const rows = useMemo(() => tierRows(kit, book), [kit, book]);
  const [open, setOpen] = useState<string | null>(null);
  const adding = useAdding(actWords.addTier);
  const add = (
    <Button kind="quiet" onClick={adding.open} ref={adding.button}>
      {text.add}
    </Button>
  );
  return (
    <Section title={text.title} act={adding.asked === 0 && rows.length > 0 && add}>
      {rows.length > 0 && (
        <Table
          caption={text.title}
          columns={columnsFor(open, setOpen)}
          rows={rows}
          keyOf={(row) => row.tier.id}
          opened={(row) =>
            row.tier.id === open && <TierForm kit={kit} tier={row.tier} onGone={() => setOpen(null)} />
          }
        />
      )}
      {rows.length === 0 && adding.asked === 0 && (
        <Empty title={text.none} act={add}>
          {text.noneText}
        </Empty>
      )}
      {adding.asked > 0 && (
        <Band>
          <NewTier kit={kit} asked={adding.asked} onClose={adding.close} />
        </Band>
      )}
    </Section>
  );
}

const columnsFor = (
  open: string | null,
  setOpen: (id: string | null) => void,
): readonly Column<TierRow>[] => [
  { key: "tier", head: text.tier, names: true, cell: (row) => row.name },
  { key: "kits", head: text.kits, align: "end", cell: (row) => row.kits },
  { key: "price", head: text.price, align: "end", cell: (row) => row.price },
  { key: "postage", head: text.postage, align: "end", cell: (row) => row.postage },
  { key: "where", head: text.where, cell: (row) => row.where },
  {
    key: "change",
    head: <span className="visually-hidden">{text.change}</span>,
    align: "end",
    stacked: "alone",
    cell: (row) => {
      const isOpen = row.tier.id === open;
      return (
        <Button kind="quiet" aria-expanded={isOpen} onClick={() => setOpen(isOpen ? null : row.tier.id)}>
          {isOpen ? kitsWords.contents.close : text.change}
          <span className="visually-hidden">{kitsWords.contents.about(row.name)}</span>
        </Button>
      );
    },
  },
];
