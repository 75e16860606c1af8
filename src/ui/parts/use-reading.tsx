import { type ReactNode, useState } from "react";
import { Asked } from "./asked.tsx";
import type { Reading } from "./read/reading.ts";

type Options = Readonly<{
  value: string | null;
  onValue: (value: string | null) => void;
  read: (text: string) => Reading;
  print: (value: string) => string;
  /** The question put when a text has two readings. */
  ask: (text: string) => string;
  fault?: ReactNode;
}>;

/**
 * A field that takes what people write and reads it when it is left. What was written stays until it can be
 * read; the value is only told when there is one, or when the field was emptied.
 */
export function useReading({ value, onValue, read, print, ask, fault }: Options) {
  const [draft, setDraft] = useState<string | null>(null);
  const [reading, setReading] = useState<Reading | null>(null);
  const take = (next: string | null) => {
    setDraft(null);
    setReading(null);
    if (next !== value) onValue(next);
  };
  const leave = () => {
    if (draft === null) return;
    const result = read(draft);
    if (result.kind === "empty") take(null);
    else if (result.kind === "value") take(result.value);
    else setReading(result);
  };
  const write = (text: string) => {
    setDraft(text);
    setReading(null);
  };
  const own =
    reading?.kind === "fault" ? (
      reading.fault
    ) : reading?.kind === "ask" ? (
      <>
        {ask(draft ?? "")} <Asked values={reading.values} print={print} onValue={take} />
      </>
    ) : null;
  return {
    text: draft ?? (value === null ? "" : print(value)),
    write,
    leave,
    fault: own ?? fault,
    asks: reading?.kind === "ask",
  };
}
