import { type KeyboardEvent, useState } from "react";
import { foldWords } from "../words/fold-words.ts";
import { words } from "../words/index.ts";
import styles from "./chooser.module.css";
import fieldStyles from "./field.module.css";
import { type FieldBasics, FieldShell, useFieldIds } from "./field-shell.tsx";
import { useCombobox } from "./use-combobox.ts";

export type ChooserOption = Readonly<{ value: string; label: string; more?: string }>;

type Props = FieldBasics &
  Readonly<{
    value: string | null;
    options: readonly ChooserOption[];
    onValue: (value: string | null) => void;
    /** A text that is in no option may be taken as it is. */
    takesNew?: boolean;
    /** How many are listed at once. */
    limit?: number;
  }>;

/** A line of the list: an option, or what was typed. */
type Listed = ChooserOption & Readonly<{ isNew?: boolean }>;

/** The options that hold every word of the text; those that begin with it come first. */
function fitting(options: readonly ChooserOption[], text: string, limit: number): readonly ChooserOption[] {
  const wanted = foldWords(text).split(" ");
  const holds = (option: ChooserOption) => {
    const known = foldWords(`${option.label} ${option.more ?? ""}`);
    return wanted.every((word) => known.includes(word));
  };
  const rank = (option: ChooserOption) => (foldWords(option.label).startsWith(foldWords(text)) ? 0 : 1);
  return options
    .filter(holds)
    .toSorted((a, b) => rank(a) - rank(b))
    .slice(0, limit);
}

/** One of many, found by typing; where allowed, what was typed itself. */
export function Chooser({ value, options, onValue, takesNew = false, limit = 50, ...props }: Props) {
  const { id, control } = useFieldIds(props);
  const [draft, setDraft] = useState<string | null>(null);
  const chosen = options.find((option) => option.value === value);
  const shown = chosen?.label ?? value ?? "";
  const found = fitting(options, draft ?? "", limit);
  const text = (draft ?? "").trim();
  const isNew =
    takesNew && text !== "" && !options.some((option) => foldWords(option.label) === foldWords(text));
  const list: readonly Listed[] = isNew
    ? [...found, { value: text, label: words.chooser.use(text), isNew }]
    : found;
  const box = useCombobox({
    count: list.length,
    onPick: (index) => {
      setDraft(null);
      onValue(list[index]?.value ?? null);
    },
    onClose: () => setDraft(null),
    keepsText: takesNew,
  });
  const same = options.find((option) => foldWords(option.label) === foldWords(text));
  const leave = () => {
    if (draft !== null && text === "") onValue(null);
    else if (draft !== null && same) onValue(same.value);
    else if (isNew) onValue(text);
    box.close();
  };
  /** Enter without the arrow keys takes what was typed where it can mean one thing only. */
  const onKeyDown = (event: KeyboardEvent) => {
    const isPlain = event.key === "Enter" && box.active < 0 && text !== "" && !event.nativeEvent.isComposing;
    const only = same ?? (isNew ? { value: text } : found.length === 1 ? found[0] : undefined);
    if (!isPlain || !only) return box.inputProps.onKeyDown(event);
    event.preventDefault();
    onValue(only.value);
    box.close();
  };
  return (
    <FieldShell {...props} id={id}>
      <div className={styles.chooser}>
        <input
          {...control}
          {...box.inputProps}
          onKeyDown={onKeyDown}
          className={fieldStyles.line}
          value={draft ?? shown}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            box.show();
          }}
          onClick={() => box.show()}
          onFocus={(event) => event.currentTarget.select()}
          onBlur={leave}
        />
        <ul
          {...box.listProps}
          aria-label={props.label}
          hidden={!box.open || list.length === 0}
          className={styles.list}
        >
          {list.map((option, index) => (
            <li
              key={option.isNew ? "new" : `known ${option.value}`}
              {...box.optionProps(index)}
              className={styles.option}
            >
              <span>{option.label}</span>
              {option.more && <span className={styles.more}>{option.more}</span>}
            </li>
          ))}
        </ul>
        {box.open && list.length === 0 && <p className={styles.none}>{words.chooser.none}</p>}
        <span role="status" className="visually-hidden">
          {box.open ? words.chooser.count(list.length) : ""}
        </span>
      </div>
    </FieldShell>
  );
}
