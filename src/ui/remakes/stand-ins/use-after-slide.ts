import { useEffect, useState } from "react";
import { isStill } from "../../parts/is-still.ts";

/** How long a new half takes to slide in (look, "Motion"); the style sheet of the swatches says the same. */
const slideMs = 180;

/**
 * A value that changes only once the pair's new half has slid in; at once for whoever wants no motion.
 * @param player what plays the part: while it stays the same the value follows at once
 */
export function useAfterSlide<Value>(value: Value, player: string | null): Value {
  const [shown, setShown] = useState({ player, value });
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new player makes the value wait
  useEffect(() => {
    const timer = setTimeout(() => setShown({ player, value }), slideMs);
    return () => clearTimeout(timer);
  }, [player]);
  return shown.player === player || isStill() ? value : shown.value;
}
