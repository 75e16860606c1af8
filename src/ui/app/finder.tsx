import { type KeyboardEvent, useId, useMemo, useRef, useState } from "react";
import { isGtinSlip } from "../../engine/supply/index.ts";
import { useBook } from "../../store/index.ts";
import { useCombobox } from "../parts/use-combobox.ts";
import { words } from "../words/index.ts";
import type { Entry } from "./entries.ts";
import { findEntries, makeReady, shownOf } from "./find-entries.ts";
import styles from "./finder.module.css";
import { useKey, useSignChord } from "./keys.ts";
import { useEntries } from "./use-entries.ts";
import { useNearColours } from "./use-near-colours.ts";

/** The one search field: finds kits, supplies, remakes, places and acts by name, and goes there. */
export function Finder() {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const from = useRef<Element | null>(null);
  const [text, setText] = useState("");
  const entries = useEntries();
  const stash = useBook((state) => state.book.stash);
  const near = useNearColours(text.trim() !== "");
  const found = useMemo(
    () => foundFor(entries, (typed) => near?.(stash ?? [], typed) ?? [], text),
    [entries, near, stash, text],
  );
  const shown = useMemo(() => shownOf(found, text.trim()), [found, text]);
  const box = useCombobox({
    count: shown.length,
    onPick: (index) => {
      leave();
      shown[index]?.run();
    },
  });
  /** The focus goes back to where it was, so that an act finds what it is about, and nobody is left nowhere. */
  const leave = () => {
    setText("");
    const back = from.current?.isConnected ? from.current : document.querySelector("h1");
    if (back instanceof HTMLElement) back.focus({ preventScroll: true });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape" && !showsList) leave();
    else box.inputProps.onKeyDown(event);
  };
  useKey(words.find.key, () => field.current?.focus());
  useSignChord(words.find.key, () => field.current?.focus());
  const showsList = box.open && text.trim() !== "";
  const isWhole = showsList && near !== null; // until then more may come, and how much is said once
  return (
    <search className={styles.finder}>
      <label htmlFor={id} className={styles.label} data-filled={text !== "" || undefined}>
        <span className={styles.long}>{words.find.label}</span>
        <span className={styles.short} aria-hidden="true">
          {words.find.short}
        </span>
      </label>
      <input
        {...box.inputProps}
        ref={field}
        id={id}
        type="text"
        className={styles.field}
        value={text}
        onChange={(event) => {
          setText(event.currentTarget.value);
          box.show(0);
        }}
        onKeyDown={onKeyDown}
        onFocus={(event) => {
          from.current = event.relatedTarget;
          setTimeout(() => makeReady(entries)); // before the first key, and after the focus is shown
        }}
        onBlur={() => box.close()}
      />
      <span className={styles.key} aria-hidden="true">
        <kbd>{words.find.key}</kbd>
      </span>
      <ul
        {...box.listProps}
        aria-label={words.find.label}
        hidden={!showsList || found.length === 0}
        className={styles.list}
      >
        {shown.map((entry, index) => (
          <li key={entry.key} {...box.optionProps(index)} className={styles.option}>
            <EntryText entry={entry} />
          </li>
        ))}
      </ul>
      {isWhole && found.length === 0 && (
        <p className={styles.none}>{isGtinSlip(text) ? words.find.slip : words.find.none(text.trim())}</p>
      )}
      <span role="status" className="visually-hidden">
        {isWhole ? words.find.found(found.length) : ""}
      </span>
    </search>
  );
}

/** What is called so, then what is nearest where the text is a colour. */
function foundFor(
  entries: readonly Entry[],
  byColour: (text: string) => readonly Entry[],
  text: string,
): readonly Entry[] {
  if (text.trim() === "") return [];
  const named = findEntries(entries, text);
  const near = byColour(text).filter(({ key }) => named.every((entry) => entry.key !== key));
  return [...named, ...near];
}

function EntryText({ entry }: Readonly<{ entry: Entry }>) {
  return (
    <>
      <span>{entry.name}</span>
      <span className={styles.kind}>{entry.beside ?? entry.fact ?? words.find.kinds[entry.kind]}</span>
    </>
  );
}
