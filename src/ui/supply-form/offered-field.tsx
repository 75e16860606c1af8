import { Chooser } from "../parts/index.ts";

type Props = Readonly<{
  label: string;
  value: string | null | undefined;
  /** What it is likely to be; anything else can be written too. */
  offers: readonly string[];
  onKeep: (value: string | undefined) => void;
  fault?: string | undefined;
}>;

/** A text that is likely one of those known already, a maker or a line: offered as it is written. */
export const OfferedField = ({ label, value, offers, onKeep, fault }: Props) => (
  <Chooser
    label={label}
    value={value || null}
    options={offers.map((offer) => ({ value: offer, label: offer }))}
    takesNew
    onValue={(text) => onKeep(text?.trim() || undefined)}
    fault={fault}
  />
);
