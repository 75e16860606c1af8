import { useSyncExternalStore } from "react";

// Some browsers lay the page out for paper after the event, some after the media query: both are heard.
const paper = () => matchMedia("print");
let isOnPaper = false;

function subscribe(onChange: () => void): () => void {
  const set = (printing: boolean) => () => {
    isOnPaper = printing;
    onChange();
  };
  const [begin, end] = [set(true), set(false)];
  const follow = (event: MediaQueryListEvent) => set(event.matches)();
  const media = paper();
  addEventListener("beforeprint", begin);
  addEventListener("afterprint", end);
  media.addEventListener("change", follow);
  return () => {
    removeEventListener("beforeprint", begin);
    removeEventListener("afterprint", end);
    media.removeEventListener("change", follow);
  };
}

/**
 * Whether the page is being laid out for paper just now. For what style sheets cannot change: how a drawing is
 * made for its width, and rows that are folded away on a screen.
 */
export const usePrinting = (): boolean => useSyncExternalStore(subscribe, () => isOnPaper);
