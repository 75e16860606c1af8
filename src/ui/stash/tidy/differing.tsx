import { ColourSchema, hexFromLab, labOf } from "../../../engine/colour/index.ts";
import type { Family } from "../../../engine/supply/index.ts";
import { Choice } from "../../parts/index.ts";
import { traitLabel, valueWord } from "../../supply-form/view/trait-fields.ts";
import { plainName } from "../../words/engine/colour.ts";
import { format } from "../../words/index.ts";
import { tidyWords as words } from "../../words/tidy.ts";
import type { Difference } from "../view/merge.ts";
import { printedValue } from "../view/traits.ts";

type Props = Readonly<{
  family: Family;
  difference: Difference;
  chosen: number;
  onChosen: (option: number) => void;
}>;

const labelOf = (field: string): string =>
  field.startsWith("traits.")
    ? traitLabel(field.slice("traits.".length))
    : Object.hasOwn(words.fields, field)
      ? words.fields[field as keyof typeof words.fields]
      : field;

/** A colour in words with its number; its name where it has one. */
function colourText(value: unknown): string | null {
  const colour = ColourSchema.safeParse(value);
  if (!colour.success) return null;
  const lab = labOf(colour.data);
  return [colour.data.name, lab && `${plainName(lab)} ${hexFromLab(lab)}`].filter(Boolean).join(", ");
}

function valueText(family: Family, field: string, value: unknown): string {
  if (field === "colour") return colourText(value) ?? "";
  if (typeof value === "boolean") return value ? words.yes : words.no;
  if (field === "paid" && isMoney(value)) return format.money(value);
  if (field === "opened" && typeof value === "string") return format.date(value);
  const trait = field.startsWith("traits.") ? field.slice("traits.".length) : "";
  const texts = (Array.isArray(value) ? value : [value]).map(String);
  if (trait === "size" && Array.isArray(value)) return printedValue(trait, texts.join(" × "));
  return texts
    .map((text) => {
      const word = valueWord(family, trait, text);
      return word === text && typeof value === "number" ? printedValue(trait, text) : word;
    })
    .join(", ");
}

const isMoney = (value: unknown): value is Readonly<{ amount: string; currency: string }> =>
  typeof value === "object" && value !== null && "amount" in value && "currency" in value;

/** What doubles say differently of one field: which of them is right. */
export function Differing({ family, difference: { field, options }, chosen, onChosen }: Props) {
  return (
    <Choice
      label={labelOf(field)}
      inline
      value={String(chosen)}
      options={options.map(({ value }, at) => ({
        value: String(at),
        label:
          field === "owned"
            ? words.counts[at === 0 ? "all" : "once"](format.count(Number(value)))
            : valueText(family, field, value),
      }))}
      onValue={(picked) => onChosen(Number(picked))}
    />
  );
}
