import { languages } from "../../engine/record/index.ts";
import { format, words } from "../words/index.ts";
import styles from "./field.module.css";
import { type FieldBasics, FieldShell, useFieldIds } from "./field-shell.tsx";
import { calendarNames } from "./read/calendar-names.ts";
import { readDate, readMonth } from "./read/date.ts";
import { useReading } from "./use-reading.tsx";

type Props = FieldBasics &
  Readonly<{
    /** ISO 8601: `YYYY-MM-DD`, or `YYYY-MM` where a month is wanted. */
    value: string | null;
    onValue: (value: string | null) => void;
    want?: "day" | "month";
  }>;

/** Names of the languages spoken here, of German, which the kits' neighbours write, and of the reader's own locale. */
const names = calendarNames([
  ...languages,
  "en-GB",
  "de",
  ...(format.locale === undefined ? [] : [format.locale]),
]);

/** A day or a month, written as people write it and read when the field is left. */
export function DateField({ want = "day", ...props }: Props) {
  const isDay = want === "day";
  const reading = useReading({
    value: props.value,
    onValue: props.onValue,
    read: (text) => (isDay ? readDate(text, names) : readMonth(text, names)),
    print: isDay ? format.date : format.month,
    ask: words.date.ask,
    fault: props.fault,
  });
  const shown = {
    ...props,
    hint: props.hint ?? (isDay ? words.date.hint : words.date.monthHint),
    fault: reading.fault,
    asks: reading.asks,
  };
  const { id, control } = useFieldIds(shown);
  return (
    <FieldShell {...shown} id={id}>
      <input
        {...control}
        className={styles.line}
        autoComplete="off"
        value={reading.text}
        onChange={(event) => reading.write(event.currentTarget.value)}
        onBlur={reading.leave}
      />
    </FieldShell>
  );
}
