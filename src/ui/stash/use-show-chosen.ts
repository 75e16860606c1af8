import { useEffect } from "react";
import { takeStayed } from "./item-link.tsx";

/**
 * Brings what was chosen into sight. The focus goes back to the link that chose it, where that is still there,
 * so that the arrow keys go on from it; else it goes to the name of the chosen.
 */
export function useShowChosen(id: string | null): void {
  useEffect(() => {
    const from = takeStayed();
    const facts = document.querySelector<HTMLElement>("[data-chosen]");
    if (id === null || !facts) return;
    const stays = from?.isConnected ? from : facts.querySelector<HTMLElement>("h2");
    stays?.focus({ preventScroll: true });
    facts.scrollIntoView({ block: "nearest" });
  }, [id]);
}
