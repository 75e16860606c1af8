import { useState } from "react";
import { useBook } from "../../store/index.ts";
import { useAdding } from "../app/use-adding.ts";
import { Band } from "../kits/band.tsx";
import { Button, type Column, Empty, Section, Table } from "../parts/index.ts";
import { actWords } from "../words/acts.ts";
import { marketsWords } from "../words/markets.ts";
import { ChangeButton } from "./change-button.tsx";
import { NewShop } from "./new-shop.tsx";
import { ShopForm } from "./shop-form.tsx";
import { type ShopRow, shopRows } from "./view/lists.ts";

const words = marketsWords.shops;

/** Every shop with its postage. */
export function Shops() {
  const book = useBook((state) => state.book);
  const [open, setOpen] = useState<string | null>(null);
  const rows = shopRows(book);
  const noMarket = (book.markets ?? []).length === 0;
  const adding = useAdding(noMarket ? null : actWords.addShop);
  const add = (
    <Button kind="quiet" notNow={noMarket && words.noMarket} onClick={adding.open} ref={adding.button}>
      {words.add}
    </Button>
  );
  return (
    <Section title={words.title} act={adding.asked === 0 && rows.length > 0 && add}>
      {adding.asked > 0 && (
        <Band>
          <NewShop asked={adding.asked} onClose={adding.close} />
        </Band>
      )}
      {rows.length === 0 && adding.asked === 0 && (
        <Empty title={words.empty} act={noMarket ? undefined : add}>
          {noMarket ? words.noMarket : words.emptyText}
        </Empty>
      )}
      {rows.length > 0 && (
        <Table
          caption={words.caption}
          columns={columnsFor(open, setOpen)}
          rows={rows}
          keyOf={({ shop }) => shop.id}
          opened={({ shop }) => shop.id === open && <ShopForm shop={shop} onGone={() => setOpen(null)} />}
        />
      )}
    </Section>
  );
}

const columnsFor = (
  open: string | null,
  setOpen: (id: string | null) => void,
): readonly Column<ShopRow>[] => [
  { key: "name", head: words.name, names: true, cell: ({ shop }) => shop.name },
  { key: "market", head: words.market, cell: ({ market }) => market },
  { key: "postage", head: words.postage, align: "end", cell: ({ postage }) => postage },
  { key: "free", head: words.free, align: "end", cell: ({ free }) => free },
  { key: "abroad", head: words.abroad, cell: ({ abroad }) => abroad },
  {
    key: "change",
    head: marketsWords.change,
    headHidden: true,
    align: "end",
    stacked: "alone",
    cell: ({ shop }) => (
      <ChangeButton
        open={shop.id === open}
        about={shop.name}
        onToggle={() => setOpen(shop.id === open ? null : shop.id)}
      />
    ),
  },
];
