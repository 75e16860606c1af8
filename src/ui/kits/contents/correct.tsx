import { type Family, families, type Supply } from "../../../engine/supply/index.ts";
import { Choice, Select } from "../../parts/index.ts";
import { ColourCode, TraitInputField, traitField } from "../../supply-form/index.ts";
import { kitsWords } from "../../words/kits.ts";
import { supplyWords } from "../../words/supply.ts";
import type { Fix } from "../view/entry.ts";
import styles from "./entry.module.css";

type Props = Readonly<{
  supply: Supply;
  /** The family as it was read from the line. */
  read: Family;
  field: string;
  onFix: (fix: Fix) => void;
}>;

/** So many words still stand side by side; more of them go into a list. */
const sideBySide = 9;

/** The piece in hand, and what else it could mean. */
export function Correct({ supply, read, field, onFix }: Props) {
  if (field === "family") return <WhichFamily supply={supply} read={read} onFix={onFix} />;
  if (field.startsWith("colour")) {
    return (
      <div className={styles.narrow}>
        <ColourCode
          colour={supply.colour}
          onColour={(value) => onFix({ field: "colour", path: ["colour"], value })}
        />
      </div>
    );
  }
  return <WhichTrait supply={supply} field={field} onFix={onFix} />;
}

function WhichFamily({ supply, read, onFix }: Omit<Props, "field">) {
  return (
    <div className={styles.narrow}>
      <Select
        label={supplyWords.family}
        value={supply.family}
        options={families.map((value) => ({ value, label: supplyWords.families[value] }))}
        onValue={(family) => onFix({ field: "family", from: read, family })}
      />
    </div>
  );
}

function WhichTrait({ supply, field, onFix }: Omit<Props, "read">) {
  const trait = field.replace(/^traits\./, "");
  const known = traitField(supply.family, trait);
  const path = ["traits", trait];
  const value = supply.traits?.[trait];
  if (!known || !["word", "words", "yes-no"].includes(known.input.kind)) {
    return <p className={styles.fact}>{kitsWords.entry.inLine}</p>;
  }
  if (known.input.kind === "word" && known.input.options.length <= sideBySide) {
    return (
      <Choice
        inline
        label={known.label}
        value={typeof value === "string" ? value : ""}
        options={[...known.input.options, { value: "", label: supplyWords.notSaid }]}
        onValue={(word) => onFix({ field, path, value: word === "" ? undefined : word })}
      />
    );
  }
  return (
    <div className={styles.narrow}>
      <TraitInputField field={known} value={value} onValue={(next) => onFix({ field, path, value: next })} />
    </div>
  );
}
