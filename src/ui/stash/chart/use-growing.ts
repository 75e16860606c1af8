import { startTransition, useEffect, useState } from "react";

const atOnce = 8;

/** How many of a list are drawn: a few at once, and more between other work, until `most` are. */
export function useGrowing(most: number): number {
  const [count, setCount] = useState(atOnce);
  useEffect(() => {
    if (count >= most) return;
    const timer = setTimeout(() => startTransition(() => setCount(count + atOnce)), 0);
    return () => clearTimeout(timer);
  }, [count, most]);
  return Math.min(count, most);
}
