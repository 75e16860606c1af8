import { useEffect } from "react";
import { useBook } from "../../store/index.ts";

/** Asks before the tab is closed or loaded anew while something is not on the disk yet. */
export function useUnsavedGuard(): void {
  const isOpen = useBook(({ status, saving }) => status === "ready" && saving.state !== "saved");
  useEffect(() => {
    if (!isOpen) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener("beforeunload", ask);
    return () => window.removeEventListener("beforeunload", ask);
  }, [isOpen]);
}
