import { type ReactNode, useMemo, useState } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import { editStashItems, useBook } from "../../../store/index.ts";
import { doAct } from "../../app/do-act.ts";
import {
  Button,
  Chooser,
  type ChooserOption,
  DateField,
  Dialog,
  FieldRow,
  MoneyField,
  Select,
  Tick,
} from "../../parts/index.ts";
import { KeptField, TraitInputField } from "../../supply-form/index.ts";
import { traitFields } from "../../supply-form/view/trait-fields.ts";
import { bulkWords as words } from "../../words/bulk.ts";
import { format } from "../../words/index.ts";
import { stashWords } from "../../words/stash.ts";
import { supplyWords } from "../../words/supply.ts";
import { chooseNone } from "../choosing.ts";
import {
  type BulkEdit,
  bulkEdits,
  type Common,
  commonFamily,
  commonOf,
  noEdit,
  tagsIn,
} from "../view/bulk.ts";
import { stateOf } from "../view/known.ts";
import { currenciesOf, homeCurrency, placeOptions } from "../view/options.ts";
import { readTags } from "../view/read-item.ts";
import styles from "./bulk.module.css";

type Props = Readonly<{ items: readonly StashItem[]; onClose: () => void }>;

/** Fields for all that were chosen: what is filled in becomes the same for all, as one act. */
export function ChangeMany({ items, onClose }: Props) {
  const [edit, setEdit] = useState<BulkEdit>(noEdit);
  const edits = useMemo(() => bulkEdits(items, edit), [items, edit]);
  const touched = new Set(edits.map(({ item }) => item)).size;
  const change = () => {
    onClose();
    void doAct(editStashItems(edits)).then((done) => done && chooseNone());
  };
  const part = {
    items,
    edit,
    onEdit: (next: Partial<BulkEdit>) => setEdit((last) => ({ ...last, ...next })),
  };
  return (
    <Dialog
      open
      wide
      title={words.changeTitle(format.count(items.length))}
      onClose={onClose}
      acts={
        <>
          <Button kind="primary" notNow={touched === 0 ? words.nothingYet : null} onClick={change}>
            {touched === 0 ? words.changeThem : words.changeAct(format.count(touched))}
          </Button>
          <Button onClick={onClose}>{words.leave}</Button>
        </>
      }
    >
      <p className={styles.lead}>{words.changeText}</p>
      <Having {...part} />
      <Tags {...part} />
      <Product {...part} />
    </Dialog>
  );
}

type PartProps = Readonly<{
  items: readonly StashItem[];
  edit: BulkEdit;
  onEdit: (edit: Partial<BulkEdit>) => void;
}>;

/** What a field shows: what is to be, else what all have; and that they differ. */
function shown<T>(
  edited: T | null | undefined,
  common: Common<T>,
): Readonly<{ value: T | null; hint: ReactNode }> {
  return edited === undefined
    ? { value: common.value, hint: common.differ ? words.differ : null }
    : { value: edited, hint: null };
}

const states = Object.entries(stashWords.states).map(([value, label]) => ({ value, label }));
const asIs = { value: "", label: words.asIs };

/** Where, in what state, since when, for how much. */
function Having({ items, edit, onEdit }: PartProps) {
  const book = useBook((state) => state.book);
  const place = shown(
    edit.place,
    commonOf(items, (item) => item.place),
  );
  const state = shown(edit.state, commonOf(items, stateOf));
  const acquired = shown(
    edit.acquired,
    commonOf(items, (item) => item.acquired),
  );
  const paid = shown(
    edit.paid,
    commonOf(items, (item) => item.paid),
  );
  const bought = shown(
    edit.boughtForThis,
    commonOf(items, (item) => item.boughtForThis),
  );
  const [currency, setCurrency] = useState(paid.value?.currency ?? homeCurrency(book));
  return (
    <FieldRow>
      <Chooser
        label={stashWords.item.place}
        hint={place.hint}
        value={place.value}
        options={placeOptions(book.stash ?? [])}
        takesNew
        onValue={(next) => onEdit({ place: next })}
      />
      <Select
        label={stashWords.item.state}
        hint={state.hint}
        value={state.value ?? ""}
        options={[...(state.value ? [] : [asIs]), ...states]}
        onValue={(next) => next !== "" && onEdit({ state: next as StashItem["state"] })}
      />
      <DateField
        label={stashWords.item.acquired}
        hint={acquired.hint ?? undefined}
        value={acquired.value}
        onValue={(next) => onEdit({ acquired: next })}
      />
      <MoneyField
        label={stashWords.item.paid}
        hint={paid.hint ?? words.paidEach}
        value={paid.value ?? { amount: null, currency }}
        currencies={currenciesOf(book, currency)}
        onValue={({ amount, currency: next }) => {
          setCurrency(next);
          onEdit({ paid: amount === null ? null : { amount, currency: next } });
        }}
      />
      <Select
        label={stashWords.item.bought}
        hint={bought.hint}
        value={bought.value === null ? "" : bought.value ? "yes" : "no"}
        options={[
          { value: "", label: edit.boughtForThis === undefined ? words.asIs : stashWords.item.notSaid },
          { value: "yes", label: stashWords.item.boughtYes },
          { value: "no", label: stashWords.item.boughtNo },
        ]}
        onValue={(next) => onEdit({ boughtForThis: next === "" ? null : next === "yes" })}
      />
    </FieldRow>
  );
}

/** Tags to put on all, and those on any of them to take off. */
function Tags({ items, edit, onEdit }: PartProps) {
  const there = useMemo(() => tagsIn(items), [items]);
  const toggle = (tag: string, off: boolean) =>
    onEdit({ tagsOff: off ? [...edit.tagsOff, tag] : edit.tagsOff.filter((one) => one !== tag) });
  return (
    <FieldRow>
      <KeptField
        label={words.tagsOn}
        hint={stashWords.item.tagsHint}
        value={edit.tagsOn.join(", ")}
        read={readTags}
        onKeep={(tags) => onEdit({ tagsOn: tags ?? [] })}
      />
      {there.length > 0 && (
        <fieldset>
          <legend className={styles.legend}>{words.tagsOff}</legend>
          <div className={styles.ticks}>
            {there.map((tag) => (
              <Tick
                key={tag}
                label={tag}
                value={edit.tagsOff.includes(tag)}
                onValue={(off) => toggle(tag, off)}
              />
            ))}
          </div>
        </fieldset>
      )}
    </FieldRow>
  );
}

const optionsOf = (values: readonly (string | null | undefined)[]): readonly ChooserOption[] =>
  [...new Set(values)]
    .filter((value): value is string => !!value)
    .toSorted((a, b) => a.localeCompare(b))
    .map((value) => ({ value, label: value }));

/** Whose they are, and what all of one family share. */
function Product({ items, edit, onEdit }: PartProps) {
  const stash = useBook((state) => state.book.stash) ?? [];
  const maker = shown(
    edit.maker,
    commonOf(items, ({ supply }) => supply.maker),
  );
  const line = shown(
    edit.line,
    commonOf(items, ({ supply }) => supply.line),
  );
  const family = commonFamily(items);
  return (
    <FieldRow>
      <Chooser
        label={supplyWords.maker}
        hint={maker.hint}
        value={maker.value}
        options={optionsOf(stash.map(({ supply }) => supply.maker))}
        takesNew
        onValue={(next) => onEdit({ maker: next })}
      />
      <Chooser
        label={supplyWords.line}
        hint={line.hint}
        value={line.value}
        options={optionsOf(stash.map(({ supply }) => supply.line))}
        takesNew
        onValue={(next) => onEdit({ line: next })}
      />
      {family &&
        traitFields(family).map((field) => (
          <TraitOfAll key={field.trait} field={field} items={items} edit={edit} onEdit={onEdit} />
        ))}
    </FieldRow>
  );
}

type TraitProps = PartProps & Readonly<{ field: ReturnType<typeof traitFields>[number] }>;

function TraitOfAll({ field, items, edit, onEdit }: TraitProps) {
  const { trait } = field;
  const held = (item: StashItem): unknown => {
    const traits: Readonly<Record<string, unknown>> = item.supply.traits ?? {};
    return traits[trait];
  };
  const common = commonOf(items, held);
  const label = common.differ && !edit.traits.has(trait) ? words.differing(field.label) : field.label;
  return (
    <TraitInputField
      field={{ ...field, label }}
      value={edit.traits.has(trait) ? edit.traits.get(trait) : (common.value ?? undefined)}
      onValue={(value) => onEdit({ traits: new Map([...edit.traits, [trait, value]]) })}
    />
  );
}
