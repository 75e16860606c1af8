/**
 * Finds where the focus goes when a thing is taken away together with its own button: the heading of the part
 * it stood in. Ask before the act, call the answer after it.
 */
export function headingOf(from: Element): () => void {
  const part = from.closest("section") ?? from.closest("main");
  const heading = part?.querySelector<HTMLElement>("h1, h2, h3");
  return () => {
    if (!heading?.isConnected) return document.querySelector<HTMLElement>("h1")?.focus();
    heading.tabIndex = -1;
    heading.focus();
  };
}
