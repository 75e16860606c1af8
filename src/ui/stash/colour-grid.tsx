import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import { hueGroups } from "../../engine/colour/index.ts";
import { Button } from "../parts/index.ts";
import { usePrinting } from "../parts/use-printing.ts";
import { useRolled } from "../parts/use-rolled.ts";
import { stashWords as words } from "../words/stash.ts";
import { setSeen, stretchTo, useChoosing } from "./choosing.ts";
import styles from "./colour-grid.module.css";
import { SlotView } from "./slot.tsx";
import { type Cell, cellKey, type Layout, type Slot } from "./view/by-colour.ts";
import { isArrow, spotToward } from "./view/direction.ts";

type Props = Readonly<{ layout: Layout; chosen: string | null; onOpen: (cell: string) => void }>;

/** The slots that can be chosen, as they stand on the page. */
const reachable = (grid: HTMLElement) => [
  ...grid.querySelectorAll<HTMLElement>("a[data-slot][href], button[data-slot]"),
];

const middleOf = (element: HTMLElement) => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
};

/** Arrow keys go from swatch to swatch, in the direction they show. */
function moveFocus(event: KeyboardEvent<HTMLElement>): void {
  const from = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>("[data-slot]") : null;
  if (!from || !isArrow(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
  event.preventDefault();
  const slots = reachable(event.currentTarget);
  const to = slots[spotToward(event.key, middleOf(from), slots.map(middleOf))];
  to?.focus();
  const [here, there] = [from.dataset.slot, to?.dataset.slot];
  if (event.shiftKey && here !== undefined && there !== undefined && useChoosing.getState().on)
    stretchTo(here, there);
}

/** The one slot the Tab key stops at: where the focus was, else the chosen one, else the first that fits. */
function stopOf(slots: readonly Slot[], wanted: readonly (string | null)[]): string | null {
  const fitting = slots.filter(({ fits }) => fits);
  const known = wanted.find((id) => id !== null && fitting.some(({ item }) => item.id === id));
  return known ?? fitting[0]?.item.id ?? null;
}

const bandAboutPx = 260;

/** Nine hues across, five steps of lightness down, and under them what has no colour. */
export function ColourGrid({ layout, chosen, onOpen }: Props) {
  const [focused, setFocused] = useState<string | null>(null);
  const choosing = useChoosing(({ on }) => on);
  const table = useRef<HTMLTableElement>(null);
  const all = useMemo(() => [...layout.cells.flat(), layout.rest].flatMap(({ slots }) => slots), [layout]);
  useEffect(() => setSeen(all.flatMap(({ item, fits }) => (fits ? [item.id] : []))), [all]);
  const stop = stopOf(all, [focused, chosen]);
  const stops = layout.cells.findIndex((row) =>
    row.some(({ slots }) => slots.some(({ item }) => item.id === stop)),
  );
  const { stretches, onFocus, onBlur } = useRolled({
    list: table,
    count: layout.cells.length,
    aboutPx: bandAboutPx,
    keep: stops === -1 ? [] : [stops], // or the Tab key would have nowhere to stop
    all: usePrinting(),
    beyond: 0.3,
  });
  const view = (slot: Slot) => (
    <SlotView slot={slot} chosen={slot.item.id === chosen} stop={slot.item.id === stop} choosing={choosing} />
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: arrow keys are heard here for the links inside
    <div
      className={styles.grid}
      onKeyDown={moveFocus}
      onFocus={(event) => setFocused(event.target.dataset.slot ?? null)}
    >
      <table ref={table} className={styles.table}>
        <caption className="visually-hidden">{words.grid}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{words.lightness}</span>
            </th>
            {hueGroups.map((hue) => (
              <th key={hue} scope="col">
                {words.hues[hue]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stretches.map((stretch) =>
            "gap" in stretch ? (
              // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it can have the focus
              <tr key={`gap ${stretch.from}`} aria-hidden="true">
                <td colSpan={hueGroups.length + 1} style={{ height: stretch.gap, padding: 0 }} />
              </tr>
            ) : (
              <tr key={stretch.piece} data-piece={stretch.piece} onFocus={onFocus} onBlur={onBlur}>
                <Band row={layout.cells[stretch.piece] ?? []} view={view} onOpen={onOpen} />
              </tr>
            ),
          )}
        </tbody>
      </table>
      {layout.rest.slots.length > 0 && (
        <section className={styles.rest} aria-label={words.rest}>
          <p className={styles.restHead}>{words.rest}</p>
          <Slots slots={layout.rest.slots} view={view} />
          {layout.rest.more > 0 && <More count={layout.rest.more} onOpen={() => onOpen("rest")} />}
        </section>
      )}
    </div>
  );
}

type BandProps = Readonly<{ row: readonly Cell[] }> & Omit<CellProps, "cell">;

/** One step of lightness, through all hues. */
const Band = ({ row, view, onOpen }: BandProps) => (
  <>
    <th scope="row">{row[0] && words.bands[row[0].band]}</th>
    {row.map((cell) => (
      <td key={cell.hue}>
        <CellView cell={cell} view={view} onOpen={onOpen} />
      </td>
    ))}
  </>
);

type CellProps = Readonly<{
  cell: Cell;
  view: (slot: Slot) => React.ReactNode;
  onOpen: (cell: string) => void;
}>;

function CellView({ cell, view, onOpen }: CellProps) {
  return (
    <>
      <Slots slots={cell.slots} view={view} />
      {cell.more > 0 && <More count={cell.more} onOpen={() => onOpen(cellKey(cell.hue, cell.band))} />}
    </>
  );
}

const More = ({ count, onOpen }: Readonly<{ count: number; onOpen: () => void }>) => (
  <Button kind="quiet" className={styles.more ?? ""} onClick={onOpen}>
    {words.moreHere(count)}
  </Button>
);

const Slots = ({ slots, view }: Readonly<{ slots: readonly Slot[]; view: CellProps["view"] }>) =>
  slots.length === 0 ? null : (
    <ul className={styles.slots}>
      {slots.map((slot) => (
        <li key={slot.item.id} aria-hidden={slot.fits ? undefined : true}>
          {view(slot)}
        </li>
      ))}
    </ul>
  );
