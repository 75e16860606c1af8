import { useEffect } from "react";
import { takeStayed } from "./item-link.tsx";

/** Whether the focus is still where it was when the thing was chosen: it may come a moment later. */
function isFree(from: Element | null): boolean {
  const at = document.activeElement;
  return at === null || at === document.body || at === from || at.matches("h1, main");
}

/**
 * Brings what was chosen into sight. The focus goes back to the link that chose it, where that is still there,
 * so that the arrow keys go on from it; else it goes to the name of the chosen.
 */
export function useShowChosen(id: string): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: each thing chosen is brought into sight
  useEffect(() => {
    const from = takeStayed();
    const facts = document.querySelector<HTMLElement>("[data-chosen]");
    if (!facts) return;
    facts.scrollIntoView({ block: "nearest" });
    if (!isFree(from)) return;
    const stays = from?.isConnected ? from : facts.querySelector<HTMLElement>("h2");
    stays?.focus({ preventScroll: true });
  }, [id]);
}
