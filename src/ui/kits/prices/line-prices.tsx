import { type MouseEvent, useMemo } from "react";
import type { Line } from "../../../engine/price/index.ts";
import type { Kit } from "../../../engine/worth/index.ts";
import { removeEvidence, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Opened, useWhy, WhyButton } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { thenToHeading } from "../focus-heading.ts";
import { type FoundRow, foundRows } from "../view/found.ts";
import type { Figure, MarketPrices } from "../view/prices.ts";
import { AddPrice, type GoOn } from "./add-price.tsx";
import { GoWith } from "./go-with.tsx";
import { Precedents } from "./precedents.tsx";
import styles from "./prices.module.css";

const text = kitsWords.prices;

type Props = Readonly<{ kit: Kit; line: Line; here: MarketPrices; all: readonly MarketPrices[] }> & GoOn;

/** Everything about one line's price: each market's figures, the prices found, and which one to go with. */
export function LinePrices({ kit, line, here, all, ...goOn }: Props) {
  const book = useBook((state) => state.book);
  const found = useMemo(() => foundRows(book, line, all), [book, line, all]);
  return (
    <div className={styles.opened}>
      <section aria-label={text.asFound}>
        <h3>{text.asFound}</h3>
        <dl className={styles.accounts}>
          {all.map((market) => (
            <MarketAccount key={market.market.id} line={line} prices={market} />
          ))}
        </dl>
      </section>
      <AddPrice key={here.market.id} kit={kit} line={line} market={here.market} {...goOn} />
      <section aria-label={text.found}>
        <h3>{text.found}</h3>
        {found.length === 0 && <p className={styles.fact}>{text.foundNone}</p>}
        <ul className={styles.found}>
          {found.map((row) => (
            <Found key={row.evidence.id} kit={kit} line={line} row={row} />
          ))}
        </ul>
      </section>
      <Precedents kit={kit} line={line} market={here.market} />
      <GoWith kit={kit} line={line} here={here} />
    </div>
  );
}

function Found({ kit, line, row }: Readonly<{ kit: Kit; line: Line; row: FoundRow }>) {
  const why = useWhy();
  const name = `${row.kind} ${row.price}`;
  const remove = (event: MouseEvent<HTMLElement>) =>
    thenToHeading(event.currentTarget, () => doAct(removeEvidence(kit, line, row.evidence)));
  return (
    <li>
      <div className={styles.foundLine}>
        <strong>{row.price}</strong>
        <span>{row.kind}</span>
        <span className={styles.fact}>{row.facts}</span>
        <span className={styles.foundActs}>
          <WhyButton why={why} about={name} />
          <Button kind="quiet" onClick={remove}>
            {text.remove}
            <span className="visually-hidden">{text.removeName(name)}</span>
          </Button>
        </span>
      </div>
      <Opened why={why} bare>
        {row.why.map((sentence) => (
          <p key={sentence} className={styles.comesTo}>
            {sentence}
          </p>
        ))}
      </Opened>
    </li>
  );
}

function MarketAccount({ line, prices }: Readonly<{ line: Line; prices: MarketPrices }>) {
  const row = prices.rows.find((one) => one.line.id === line.id);
  return (
    <>
      <dt>{prices.market.name}</dt>
      <dd>
        <Account label={text.listOf} figure={row?.list ?? null} />
        <Account label={text.shopOf} figure={row?.shop ?? null} />
      </dd>
    </>
  );
}

function Account({ label, figure }: Readonly<{ label: string; figure: Figure | null }>) {
  return (
    <p>
      <span className={styles.fact}>{label}</span>{" "}
      {figure ? (
        <>
          <strong>{format.money(figure.likely)}</strong>
          {figure.range && <span className={styles.fact}> {figure.range}</span>}
          <span className={styles.sentence}>{figure.sentence}</span>
        </>
      ) : (
        <span className={styles.sentence}>{text.nothing}</span>
      )}
    </p>
  );
}
