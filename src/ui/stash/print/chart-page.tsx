import { useMemo } from "react";
import { useAddressValue } from "../../app/navigate.ts";
import { Acts, Button, FieldRow, Page, Select } from "../../parts/index.ts";
import { usePrinting } from "../../parts/use-printing.ts";
import { words as common, format } from "../../words/index.ts";
import { printWords } from "../../words/print.ts";
import styles from "./chart.module.css";
import { ChartSheetView } from "./chart-sheet.tsx";
import { Elsewhere } from "./elsewhere.tsx";
import { useThings } from "./use-things.ts";
import { blankSheets, chartSheets, leavesColour } from "./view/chart.ts";
import { type Columns, columnCounts, gridOf } from "./view/layout.ts";
import { type ChartOrder, chartOrders } from "./view/order.ts";
import { WhichThings } from "./which.tsx";

const words = printWords.chart;

/** How many sheets are drawn on a screen: enough to see how they will look. */
const sheetsShown = 2;

const columnsIn = (value: string | null): Columns =>
  columnCounts.find((columns) => String(columns) === value) ?? 4;
const orderIn = (value: string | null): ChartOrder => chartOrders.find((order) => order === value) ?? "code";

/** A chart of swatches to colour in by hand, true to the millimetre. */
export function ChartPage() {
  const things = useThings();
  const [askedColumns, setColumns] = useAddressValue("columns");
  const [askedOrder, setOrder] = useAddressValue("order");
  const [columns, order] = [columnsIn(askedColumns), orderIn(askedOrder)];
  const grid = useMemo(() => gridOf(columns), [columns]);
  const { items, which } = things;
  const coloured = useMemo(() => items.filter(leavesColour), [items]);
  const sheets = useMemo(
    () => (which === "blank" ? blankSheets : chartSheets(coloured, order, grid)),
    [which, coloured, order, grid],
  );
  const isPrinting = usePrinting();
  const shown = isPrinting ? sheets : sheets.slice(0, sheetsShown);
  const [more, leftOut] = [sheets.length - shown.length, items.length - coloured.length];
  return (
    <Page
      place={common.places.stash}
      title={words.title}
      lead={words.lead}
      leadMore={words.leadMore}
      note={words.note}
      margin={<Elsewhere value="list" label={printWords.listAct} />}
    >
      <div className="screen-only">
        <div className={styles.asked}>
          <WhichThings things={things} blank />
          <FieldRow>
            <Select
              label={words.columns}
              value={String(columns)}
              options={columnCounts.map((count) => ({ value: String(count), label: columnsText(count) }))}
              onValue={setColumns}
            />
            {which !== "blank" && (
              <Select
                label={words.order}
                value={order}
                options={chartOrders.map((value) => ({ value, label: words.orders[value] }))}
                onValue={setOrder}
              />
            )}
          </FieldRow>
          <p role="status" className={styles.leftOut}>
            {leftOut > 0 && words.leftOut(format.count(leftOut), leftOut === 1)}
          </p>
          <Acts>
            <Button kind="primary" notNow={sheets.length === 0 && words.none} onClick={() => print()}>
              {printWords.print}
            </Button>
          </Acts>
        </div>
      </div>
      {sheets.length === 0 && <p>{words.none}</p>}
      <div className={styles.sheets}>
        {shown.map((labels, at) => (
          <ChartSheetView
            // biome-ignore lint/suspicious/noArrayIndexKey: sheets are told apart by their place alone
            key={at}
            labels={labels}
            grid={grid}
            at={at + 1}
            all={sheets.length}
          />
        ))}
      </div>
      {more > 0 && <p className={styles.leftOut}>{printWords.moreSheets(format.count(more), more === 1)}</p>}
    </Page>
  );
}

function columnsText(count: Columns): string {
  const { cell } = gridOf(count);
  return words.columnsOf(format.count(count), format.number(cell.width), format.number(cell.height));
}
