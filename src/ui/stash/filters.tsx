import { useState } from "react";
import { Button, ButtonLink, classes, Select } from "../parts/index.ts";
import { findWords } from "../words/find.ts";
import { format } from "../words/index.ts";
import { stashWords as words } from "../words/stash.ts";
import styles from "./filters.module.css";
import { tidyAddress } from "./tidy/tidies.ts";
import type { Tallies, Tally } from "./view/counts.ts";
import type { Filter, FilterKey } from "./view/filters.ts";

type FilterProps = Readonly<{
  filters: readonly Filter[];
  onTick: (key: FilterKey, value: string | null) => void;
}>;

/** How many lines of one list stand in the margin before the rest is folded away. */
const folded = 7;

/** What the stash holds, and its kinds, places, states and the rest to narrow down by: in the margin. */
export function MarginFilters({ tallies, filters, onTick }: FilterProps & Readonly<{ tallies: Tallies }>) {
  return (
    <div className={styles.margin}>
      <p>{tallies.sum}</p>
      <p>{tallies.colours}</p>
      <ButtonLink kind="quiet" to={tidyAddress("doubles")}>
        {findWords.tidy}
      </ButtonLink>
      <div className={styles.wide}>
        {filters.map(({ key, title, tallies: some, value }) => (
          <TallyList
            key={key}
            title={title}
            tallies={some}
            value={value}
            onValue={(picked) => onTick(key, picked)}
          />
        ))}
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

/** Those that stand in sight where the margin has no room for lists; the rest is behind a button. */
const first: readonly FilterKey[] = ["kind", "place", "state"];

/** The same where the margin has no room for lists. */
export function NarrowFilters({ filters, onTick }: FilterProps) {
  const [open, setOpen] = useState(false);
  const isUsed = ({ key, value }: Filter) => first.includes(key) || value !== null;
  const shown = open ? filters : filters.filter(isUsed);
  return (
    <div className={styles.narrow}>
      {shown.map(({ key, title, tallies, value }) => (
        <Select
          key={key}
          label={title}
          value={value === null ? "all" : `is ${value}`}
          options={optionsOf(tallies)}
          onValue={(picked) => onTick(key, picked === "all" ? null : picked.slice("is ".length))}
        />
      ))}
      {filters.some((filter) => !isUsed(filter)) && (
        <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? findWords.fewerFilters : findWords.moreFilters}
        </Button>
      )}
    </div>
  );
}
