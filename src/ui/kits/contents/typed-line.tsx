import { type ClipboardEvent, type KeyboardEvent, type Ref, useId, useLayoutEffect, useRef } from "react";
import { classes } from "../../parts/index.ts";
import { kitsWords } from "../../words/kits.ts";
import type { EntryView } from "../view/entry.ts";
import { layReadings } from "./lay-readings.ts";
import styles from "./typed-line.module.css";

const text = kitsWords.entry;

type Props = Readonly<{
  label: string;
  value: string;
  onValue: (value: string) => void;
  view: EntryView | null;
  /** The field of the piece in hand. */
  inHand: string | null;
  onHand: (field: string) => void;
  onCaret: (caret: number) => void;
  onEnter: () => void;
  onPasted: (pasted: string) => boolean;
  fieldRef: Ref<HTMLTextAreaElement>;
  /** The list under the line, and what its keys do. */
  list?: Readonly<{
    controls: string;
    active: string | undefined;
    onKeyDown: (event: KeyboardEvent) => void;
    onLeave: () => void;
  }>;
}>;

/** Up and down go through a wrapped text first, and on to the list from its end. */
const isAtEnd = ({ selectionStart, value }: HTMLTextAreaElement): boolean => selectionStart === value.length;

/** Goes to what else the piece in hand could mean, which stands under the line. */
function focusChoices(sheet: HTMLElement): void {
  const all = [...(sheet.parentElement?.querySelectorAll<HTMLElement>("input, select") ?? [])];
  const chosen = all.find((one) => one.matches(":checked"));
  (chosen ?? all[0])?.focus();
}

/**
 * A line as it is typed, each understood piece bracketed from below with its reading under it. The brackets
 * lie on a copy of the text in the same place; the readings are buttons, so Tab walks the pieces, and pressing one
 * leads to what else it could mean.
 */
export function TypedLine(props: Props) {
  const { label, value, view, inHand, onHand, onCaret, fieldRef, list } = props;
  const id = useId();
  const sheet = useRef<HTMLDivElement>(null);
  const copy = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: readings move whenever the text does
  useLayoutEffect(() => {
    const box = copy.current;
    if (!box) return;
    layReadings(box);
    const watcher = new ResizeObserver(() => layReadings(box));
    watcher.observe(box);
    return () => watcher.disconnect();
  }, [view]);
  const onKeyDown = (event: KeyboardEvent<HTMLTextAreaElement>) => {
    if (list && (list.active || event.key === "Escape" || isAtEnd(event.currentTarget)))
      list.onKeyDown(event);
    if (event.defaultPrevented) return;
    if (event.key !== "Enter" || event.shiftKey || event.nativeEvent.isComposing) return;
    event.preventDefault();
    props.onEnter();
  };
  const onPaste = (event: ClipboardEvent) => {
    if (props.onPasted(event.clipboardData.getData("text/plain"))) event.preventDefault();
  };
  return (
    <div ref={sheet} className={styles.sheet}>
      <label htmlFor={id} className="visually-hidden">
        {label}
      </label>
      <textarea
        ref={fieldRef}
        id={id}
        className={styles.typed}
        rows={1}
        value={value}
        placeholder={text.example}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        aria-describedby={`${id}-read`}
        aria-autocomplete={list ? "list" : undefined}
        aria-controls={list?.controls}
        aria-activedescendant={list?.active}
        onBlur={list?.onLeave}
        onChange={(event) => props.onValue(event.currentTarget.value)}
        onSelect={(event) => onCaret(event.currentTarget.selectionStart)}
        onKeyDown={onKeyDown}
        onPaste={onPaste}
      />
      <div ref={copy} className={styles.copy}>
        {view?.stretches.map(({ key, text: stretch, piece }) =>
          piece ? (
            <span key={key} className={classes(styles.piece, piece.field === inHand && styles.inHand)}>
              <span aria-hidden="true">{stretch}</span>
              <button
                type="button"
                className={styles.reading}
                aria-pressed={piece.field === inHand}
                aria-label={text.reading(piece.text, piece.reads)}
                onFocus={() => onHand(piece.field)}
                onClick={() => {
                  onHand(piece.field);
                  setTimeout(() => sheet.current && focusChoices(sheet.current), 0); // once they are there
                }}
              >
                {piece.reads}
              </button>
            </span>
          ) : (
            <span key={key} aria-hidden="true">
              {stretch}
            </span>
          ),
        )}
        {"\u200b"}
      </div>
      <p id={`${id}-read`} className="visually-hidden">
        {view ? view.understood : text.hint}
      </p>
    </div>
  );
}
