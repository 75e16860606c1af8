import { useSyncExternalStore } from "react";

const phone = "(width < 40rem)";

function watch(tell: () => void): () => void {
  const query = matchMedia(phone);
  query.addEventListener("change", tell);
  return () => query.removeEventListener("change", tell);
}

/** Whether the page is as narrow as a phone, where one thing is shown at a time. */
export const useNarrow = (): boolean => useSyncExternalStore(watch, () => matchMedia(phone).matches);
