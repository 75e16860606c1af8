import { type ReactNode, useMemo, useState } from "react";
import { families, isGtin, lightfastness, type Supply } from "../../engine/supply/index.ts";
import { useBook } from "../../store/index.ts";
import { Button, FieldRow, Select } from "../parts/index.ts";
import { supplyWords as words } from "../words/supply.ts";
import { ColourFields } from "./colour-field.tsx";
import { KeptField, readNeeded, readText } from "./kept-field.tsx";
import { OfferedField } from "./offered-field.tsx";
import styles from "./supply-form.module.css";
import { OneOf, TraitInputField } from "./trait-input.tsx";
import { asFamily } from "./view/change-family.ts";
import { type Offers, offersIn } from "./view/offers.ts";
import type { Read } from "./view/read-trait.ts";
import { hasColour, traitFields } from "./view/trait-fields.ts";

type Props = Readonly<{
  supply: Supply;
  /**
   * Told when a field is left with another value. `path` leads from the supply to the field; an empty path is
   * the supply itself, when its family changed. Undefined: leave the field open.
   */
  onChange: (path: readonly string[], value: unknown) => void;
  /** Fields of the thing the supply belongs to, in the same grid (how many, say). */
  children?: ReactNode;
}>;

/** Every field of a supply of any family. It keeps nothing itself: the caller does, field by field. */
export function SupplyForm({ supply, onChange, children }: Props) {
  const book = useBook((state) => state.book);
  const offers = useMemo(() => offersIn(book), [book]);
  return (
    <div className={styles.form}>
      <Named supply={supply} offers={offers} onChange={onChange} />
      <FieldRow>
        {(hasColour(supply.family) || supply.colour) && (
          <ColourFields colour={supply.colour} onColour={(colour) => onChange(["colour"], colour)} />
        )}
        {traitFields(supply.family).map((field) => (
          <TraitInputField
            key={`${supply.family} ${field.trait}`}
            field={field}
            value={supply.traits?.[field.trait]}
            likely={offers.likely(supply, field.trait)}
            onValue={(value) => onChange(["traits", field.trait], value)}
          />
        ))}
        {children}
      </FieldRow>
      <More supply={supply} onChange={onChange} />
    </div>
  );
}

const familyOptions = families.map((value) => ({ value, label: words.families[value] }));

function Named({ supply, offers, onChange }: Props & Readonly<{ offers: Offers }>) {
  return (
    <FieldRow>
      <Select
        label={words.family}
        value={supply.family}
        options={familyOptions}
        onValue={(family) => onChange([], asFamily(supply, family))}
      />
      <KeptField
        label={words.name}
        value={supply.name}
        read={readNeeded(words.nameMissing)}
        onKeep={(name) => onChange(["name"], name)}
      />
      <OfferedField
        label={words.maker}
        value={supply.maker}
        offers={offers.makers}
        onKeep={(maker) => onChange(["maker"], maker)}
      />
      <OfferedField
        label={words.line}
        value={supply.line}
        offers={offers.linesOf(supply.maker ?? "")}
        onKeep={(line) => onChange(["line"], line)}
      />
    </FieldRow>
  );
}

type TextProps = Props &
  Readonly<{
    field: "code" | "gtin" | "safety";
    read?: (text: string) => Read<string>;
  }>;

function Text({ supply, onChange, field, read = readText }: TextProps) {
  return (
    <KeptField
      label={words[field]}
      value={supply[field] ?? ""}
      read={read}
      onKeep={(value) => onChange([field], value)}
    />
  );
}

const readBarcode = (text: string): Read<string> =>
  text.trim() === "" || isGtin(text.trim()) ? readText(text) : { ok: false, fault: words.gtinOdd };

const lightfastOptions = lightfastness.map((value) => ({
  value,
  label: words.lightfastLevels[value] ?? words.blueWool(value.slice(2)),
}));

/** What is seldom filled in, folded away until it is asked for or holds something. */
function More({ supply, onChange }: Props) {
  const filled = Boolean(supply.code || supply.gtin || supply.lightfast || supply.safety);
  const [open, setOpen] = useState(filled);
  return (
    <div className={styles.more}>
      <Button kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? words.moreClose : words.more}
      </Button>
      {open && (
        <FieldRow>
          <Text supply={supply} onChange={onChange} field="code" />
          <Text supply={supply} onChange={onChange} field="gtin" read={readBarcode} />
          <OneOf
            label={words.lightfast}
            options={lightfastOptions}
            value={supply.lightfast}
            onValue={(value) => onChange(["lightfast"], value)}
          />
          <Text supply={supply} onChange={onChange} field="safety" />
        </FieldRow>
      )}
    </div>
  );
}
