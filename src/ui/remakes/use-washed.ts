import { useEffect, useRef, useState } from "react";
import { isStill } from "../parts/is-still.ts";

const washMs = 600;
const stillMs = 1_500;

const none: ReadonlySet<string> = new Set();

/**
 * The lines that something else plays than a moment ago: they get a wash that fades, or stays a while and goes
 * for whoever wants no motion.
 * @param players what plays each line, in the lines' order
 */
export function useWashed(
  players: readonly Readonly<{ line: string; stash: string | null }>[],
): ReadonlySet<string> {
  const before = useRef<ReadonlyMap<string, string | null> | null>(null);
  const [washed, setWashed] = useState(none);
  useEffect(() => {
    const was = before.current;
    before.current = new Map(players.map(({ line, stash }) => [line, stash]));
    const changed = was ? players.filter(({ line, stash }) => was.get(line) !== stash) : [];
    if (changed.length > 0) setWashed(new Set(changed.map(({ line }) => line)));
  }, [players]);
  useEffect(() => {
    if (washed === none) return undefined;
    const timer = setTimeout(() => setWashed(none), isStill() ? stillMs : washMs);
    return () => clearTimeout(timer);
  }, [washed]);
  return washed;
}
