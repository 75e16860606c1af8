import type { ReactNode } from "react";
import { type Money, minorDigits } from "../../engine/money/index.ts";
import { format, words } from "../words/index.ts";
import { classes } from "./classes.ts";
import styles from "./figures.module.css";

type MoneyProps = Readonly<{
  money: Money;
  /** `always` for gains and losses: "+44.26". */
  sign?: "auto" | "always";
  /** Only the amount: where a heading already names the currency. */
  bare?: boolean;
  /** Decimals the column makes room for, so that EUR and JPY under each other line up on the mark. */
  room?: number;
  /** Weight 600: for totals. */
  total?: boolean;
}>;

/** An amount in the reader's own format. Room is kept after the mark, so columns line up. */
export function MoneyText({ money, sign = "auto", bare = false, room = 0, total = false }: MoneyProps) {
  const pieces = format.moneyPieces(money, sign, !bare);
  const digits = minorDigits(money.currency);
  const missing = Math.max(0, room - digits) + (room > 0 && digits === 0 ? 0.5 : 0);
  return (
    <span className={classes(styles.money, total && styles.total)}>
      {pieces.before}
      {pieces.whole}
      {pieces.fraction}
      {pieces.after}
      {missing > 0 && <span style={{ display: "inline-block", width: `${missing}ch` }} />}
    </span>
  );
}

type DateProps = Readonly<{ date: string; kind?: "day" | "short" | "long" | "month" }>;

/** A day or month of an ISO date, with the date itself behind it for machines. */
export function DateText({ date, kind = "day" }: DateProps) {
  const print = { day: format.date, short: format.shortDate, long: format.longDate, month: format.month }[
    kind
  ];
  return <time dateTime={date}>{print(date)}</time>;
}

type NearnessProps = Readonly<{
  /** 0–100, or null for a gap. */
  figure: number | null;
  words: ReactNode;
  /** `line` puts figure and words beside each other, as on a phone. */
  layout?: "stack" | "line";
}>;

/** How near a stand-in is: the figure of 100, and in words. */
export function Nearness({ figure, words: said, layout = "stack" }: NearnessProps) {
  return (
    <p className={classes(styles.nearness, layout === "line" && styles.line)}>
      <span className={styles.figure}>{figure === null ? "\u2014" : format.count(figure)}</span>
      {figure !== null && <span className="visually-hidden"> {words.ofHundred}, </span>}
      <span className={styles.words}>{said}</span>
    </p>
  );
}
