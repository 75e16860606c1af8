/** Where the focus goes when a thing is taken away together with its own button: the heading of the part it stood in. */
function headingOf(from: Element): () => void {
  const part = from.closest("section") ?? from.closest("main");
  const heading = part?.querySelector<HTMLElement>("h1, h2, h3");
  return () => {
    if (!heading?.isConnected) return document.querySelector<HTMLElement>("h1")?.focus();
    heading.tabIndex = -1;
    heading.focus();
  };
}

/**
 * Does what takes its own button away, and then gives the focus to the heading of the part that the button stood in.
 * Where the act is not kept, the button and the focus stay.
 * @param act tells whether it was kept
 * @param onGone what else is done once it was
 */
export async function thenToHeading(
  from: Element,
  act: () => Promise<boolean>,
  onGone?: () => void,
): Promise<void> {
  const goOn = headingOf(from);
  if (!(await act())) return;
  onGone?.();
  goOn();
}
