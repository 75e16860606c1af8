import { useEffect } from "react";
import type { Known } from "./view/known.ts";

/** How long the texts of a stash are made ready for at a time: shorter than a frame. */
const sliceMs = 6;

type Stop = () => void;

/** When nothing else is to be done; a little later where browsers do not tell. */
function whenIdle(work: () => void): Stop {
  if (typeof requestIdleCallback === "function") {
    const asked = requestIdleCallback(work);
    return () => cancelIdleCallback(asked);
  }
  const timer = setTimeout(work, 50);
  return () => clearTimeout(timer);
}

/** Makes ready, while nobody waits, what a search looks into, so that its first key is as quick as the next. */
export function useWarm(stash: readonly Known[]): void {
  useEffect(() => {
    let [at, stop]: [number, Stop] = [0, () => {}];
    const work = () => {
      const end = performance.now() + sliceMs;
      while (at < stash.length && performance.now() < end) {
        void stash[at]?.findable;
        at += 1;
      }
      if (at < stash.length) stop = whenIdle(work);
    };
    stop = whenIdle(work);
    return () => stop();
  }, [stash]);
}
