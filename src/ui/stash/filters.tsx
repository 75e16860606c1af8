import { useState } from "react";
import { Button, classes, Select } from "../parts/index.ts";
import { format } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import styles from "./filters.module.css";
import type { AskedState } from "./use-asked.ts";
import type { Tallies, Tally } from "./view/counts.ts";

type Props = Readonly<{ tallies: Tallies; state: AskedState }>;

/** How many lines of one list stand in the margin before the rest is folded away. */
const folded = 7;

/** What the stash holds, and its kinds, places and states to narrow down by: in the margin. */
export function MarginFilters({ tallies, state }: Props) {
  const { asked, setKind, setPlace, setState } = state;
  return (
    <div className={styles.margin}>
      <p>{tallies.sum}</p>
      <p>{tallies.colours}</p>
      <div className={styles.wide}>
        <TallyList title={words.kind} tallies={tallies.kinds} value={asked.kind} onValue={setKind} />
        <TallyList title={words.where} tallies={tallies.places} value={asked.place} onValue={setPlace} />
        {tallies.states.length > 1 && (
          <TallyList title={words.state} tallies={tallies.states} value={asked.state} onValue={setState} />
        )}
      </div>
    </div>
  );
}

type ListProps = Readonly<{
  title: string;
  tallies: readonly Tally[];
  value: string | null;
  onValue: (value: string | null) => void;
}>;

function TallyList({ title, tallies, value, onValue }: ListProps) {
  const [open, setOpen] = useState(false);
  const isLong = tallies.length > folded + 1;
  const shown = isLong && !open ? tallies.slice(0, folded) : tallies;
  const chosen = tallies.find((one) => one.value === value);
  const all = chosen && !shown.includes(chosen) ? [...shown, chosen] : shown;
  return (
    <fieldset className={styles.list}>
      <legend>{title}</legend>
      <ul>
        {all.map((one) => (
          <li key={one.value}>
            <button
              type="button"
              aria-pressed={one.value === value}
              className={classes(styles.tally, one.value === value && styles.current)}
              onClick={() => onValue(one.value === value ? null : one.value)}
            >
              <span>{one.label}</span>
              <span>{format.count(one.count)}</span>
            </button>
          </li>
        ))}
      </ul>
      {isLong && (
        <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? words.fewer : words.more(tallies.length - folded)}
        </Button>
      )}
    </fieldset>
  );
}

const optionsOf = (tallies: readonly Tally[]) => [
  { value: "all", label: words.all },
  ...tallies.map(({ value, label, count }) => ({
    value: `is ${value}`,
    label: `${label} (${format.count(count)})`,
  })),
];

/** The same where the margin has no room for lists. */
export function NarrowFilters({ tallies, state }: Props) {
  const { asked, setKind, setPlace, setState } = state;
  const lists = [
    { title: words.kind, tallies: tallies.kinds, value: asked.kind, onValue: setKind },
    { title: words.where, tallies: tallies.places, value: asked.place, onValue: setPlace },
    { title: words.state, tallies: tallies.states, value: asked.state, onValue: setState },
  ];
  return (
    <div className={styles.narrow}>
      {lists.map(({ title, tallies: some, value, onValue }) => (
        <Select
          key={title}
          label={title}
          value={value === null ? "all" : `is ${value}`}
          options={optionsOf(some)}
          onValue={(picked) => onValue(picked === "all" ? null : picked.slice("is ".length))}
        />
      ))}
    </div>
  );
}
