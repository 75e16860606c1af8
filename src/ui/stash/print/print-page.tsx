import { useAddressValue } from "../../app/navigate.ts";
import { ChartPage } from "./chart-page.tsx";
import { ListPage } from "./list-page.tsx";

/** What the address asks for on paper: the list, or a chart of swatches to colour in. */
export function PrintPage() {
  const [what] = useAddressValue("print");
  return what === "chart" ? <ChartPage /> : <ListPage />;
}
