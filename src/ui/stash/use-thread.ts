import { useEffect, useRef } from "react";

/** A worker that a page holds, as far as ending it goes. */
type Thread = Readonly<{ stop: () => void }>;

/**
 * A thread of work that a page starts and ends, at the latest with itself. Answers that come after something else was
 * asked for count no more: `turn` tells, and `next` begins another.
 */
export function useThread<T extends Thread>() {
  const held = useRef<T | null>(null);
  const turn = useRef(0);
  const next = (): number => {
    turn.current += 1;
    return turn.current;
  };
  const stop = () => {
    next();
    held.current?.stop();
    held.current = null;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the thread ends with the page
  useEffect(() => stop, []);
  return { held, turn, next, stop } as const;
}
