import { useEffect, useState } from "react";
import { type Stored, useBook } from "../../store/index.ts";

/** What the store keeps besides the book, read again after each act; null until it has been read. */
export function useKept<T>(read: () => Promise<Stored<T>>): Stored<T> | null {
  const at = useBook((state) => state.saving.at);
  const count = useBook((state) => state.past);
  const [kept, setKept] = useState<Stored<T> | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new act is what asks for another reading
  useEffect(() => {
    let isCurrent = true;
    void read().then((value) => {
      if (isCurrent) setKept(value);
    });
    return () => {
      isCurrent = false;
    };
  }, [read, at, count]);
  return kept;
}
