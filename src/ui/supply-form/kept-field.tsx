import { type ReactNode, useEffect, useRef, useState } from "react";
import { Field } from "../parts/index.ts";
import { type Read, readNumber } from "./view/read-trait.ts";

type Props<T> = Readonly<{
  label: string;
  value: string;
  /** What the text stands for, read when the field is left. */
  read: (text: string) => Read<T>;
  onKeep: (value: T | undefined) => void;
  hint?: ReactNode;
  unit?: string | null;
  keys?: "text" | "decimal" | "numeric";
  lines?: number;
  wraps?: boolean;
  id?: string;
  labelHidden?: boolean;
  autoFocus?: boolean;
}>;

/** A field that keeps what is typed when it is left; what cannot be read stays, with its fault under it. */
export function KeptField<T>({ value, read, onKeep, unit, ...rest }: Props<T>) {
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const keep = () => {
    if (draft === null) return;
    if (draft === value) return setDraft(null);
    const reading = read(draft);
    if (!reading.ok) return setFault(reading.fault);
    setDraft(null);
    onKeep(reading.value);
  };
  useOnGoing(keep);
  return (
    <Field
      {...rest}
      value={draft ?? value}
      fault={fault}
      unit={unit ?? undefined}
      onValue={(text) => {
        setDraft(text);
        setFault(null);
      }}
      onLeave={keep}
      onEnter={keep}
    />
  );
}

/** Does it once more when the field goes: the back key takes a page away without leaving its fields first. */
function useOnGoing(keep: () => void): void {
  const latest = useRef(keep);
  useEffect(() => {
    latest.current = keep;
  });
  useEffect(() => () => latest.current(), []);
}

/** Text as it stands; nothing written leaves the field open. */
export const readText = (text: string): Read<string> => ({ ok: true, value: text.trim() || undefined });

/** Text that has to be there. */
export const readNeeded =
  (fault: string) =>
  (text: string): Read<string> =>
    text.trim() === "" ? { ok: false, fault } : { ok: true, value: text.trim() };

/** A whole number from 1 up that has to be there. */
export const readWhole =
  (fault: string) =>
  (text: string): Read<number> => {
    const reading = readNumber(text, true);
    return reading.ok && reading.value !== undefined ? reading : { ok: false, fault };
  };
