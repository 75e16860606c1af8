import { useEffect, useMemo, useRef } from "react";
import type { Supply } from "../../../engine/supply/index.ts";
import { Button, Choice, Chooser, type ChooserOption } from "../../parts/index.ts";
import { Pair, Swatch } from "../../swatch/index.ts";
import { chartWords as words } from "../../words/chart.ts";
import styles from "./chart.module.css";
import { type Cell, type CellView, cellView, supplyOf } from "./view/cells.ts";
import type { Use } from "./view/colour.ts";

type Props = Readonly<{
  cell: Cell;
  isTwice: boolean;
  /** The things of the stash to choose from; null where the swatches are new things. */
  options: readonly ChooserOption[] | null;
  isChanging: boolean;
  onChanging: (is: boolean) => void;
  onThing: (id: string | null) => void;
  onUse: (use: Use) => void;
}>;

/** One swatch of the chart: its colour or why it has none, what it is, and what becomes of it. */
export function CellRow({ cell, isTwice, options, isChanging, onChanging, onThing, onUse }: Props) {
  const view = useMemo(() => cellView(cell), [cell]);
  const { number, name, facts, place, figures, compared, use, uses } = view;
  return (
    <li className={styles.cell}>
      <Drawn view={view} before={supplyOf(cell.stands)} />
      <div className={styles.said}>
        <p>
          <span className={styles.number}>{number}</span> <strong>{name ?? words.nobody}</strong>{" "}
          <span className={styles.fact}>{name === null ? place : facts}</span>
        </p>
        <p className={styles.fact}>{figures}</p>
        {compared && (
          <p className={styles.fact}>
            {compared.said} <span className={styles.apart}>({compared.figures})</span>{" "}
            {compared.isFarOff && <strong>{words.farOff}</strong>}
          </p>
        )}
        {isTwice && <p className={styles.fact}>{words.twice}</p>}
        {uses.length > 0 && (
          <Choice label={words.colourOf(number)} labelHidden value={use} options={uses} onValue={onUse} />
        )}
      </div>
      {options && (
        <ThingOf
          view={view}
          chosen={cell.stands?.kind === "stash" ? cell.stands.item.id : null}
          options={options}
          isChanging={isChanging}
          onChanging={onChanging}
          onThing={onThing}
        />
      )}
    </li>
  );
}

const [width, height] = [104, 52];

/** What was typed beside what was measured, where both are known; a dashed blank where there is no colour. */
function Drawn({ view, before }: Readonly<{ view: CellView; before: Supply | null }>) {
  const { at, drawn, compared } = view;
  const id = `chart ${at}`;
  const measured = useMemo(() => drawn && { id, supply: drawn }, [drawn, id]);
  const typed = useMemo(() => before && { id, supply: before }, [before, id]);
  if (!measured) return <span className={styles.blank} style={{ width, height }} />;
  if (compared && typed) return <Pair kit={typed} standIn={measured} width={width} height={height} />;
  return <Swatch item={measured} width={width} height={height} />;
}

type ThingProps = Pick<Props, "isChanging" | "onChanging" | "onThing"> &
  Readonly<{ view: CellView; chosen: string | null; options: readonly ChooserOption[] }>;

/** Which thing it is: one word, until somebody wants another. */
function ThingOf({ view: { number, name }, chosen, options, isChanging, onChanging, onThing }: ThingProps) {
  const field = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isChanging) field.current?.querySelector("input")?.focus();
  }, [isChanging]);
  if (!isChanging) {
    return (
      <Button
        kind="quiet"
        aria-label={(name === null ? words.chooseFor : words.changeFor)(number)}
        onClick={() => onChanging(true)}
      >
        {name === null ? words.choose : words.change}
      </Button>
    );
  }
  return (
    <div ref={field} className={styles.thing}>
      <Chooser label={words.thing(number)} value={chosen} options={options} onValue={onThing} />
    </div>
  );
}
