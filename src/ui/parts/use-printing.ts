import { useSyncExternalStore } from "react";

let isOnPaper = false;

// Some browsers lay the page out for paper after the event, some after the media query: both are heard.
function subscribe(onChange: () => void): () => void {
  const media = matchMedia("print");
  const begin = () => {
    isOnPaper = true;
    onChange();
  };
  const follow = () => {
    isOnPaper = media.matches;
    onChange();
  };
  addEventListener("beforeprint", begin);
  addEventListener("afterprint", follow);
  media.addEventListener("change", follow);
  return () => {
    removeEventListener("beforeprint", begin);
    removeEventListener("afterprint", follow);
    media.removeEventListener("change", follow);
  };
}

/**
 * Whether the page is being laid out for paper just now. For what style sheets cannot change: how a drawing is
 * made for its width, and rows that are folded away on a screen.
 */
export const usePrinting = (): boolean => useSyncExternalStore(subscribe, () => isOnPaper);
