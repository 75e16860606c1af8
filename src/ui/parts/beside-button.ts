const gapPx = 4;
const edgePx = 8;

/** A place beside what was pressed where all of what it opens is on the screen: below, or above where it fits better. */
export function besideButton(button: DOMRect, opened: DOMRect) {
  const below = button.bottom + gapPx;
  const fitsBelow = below + opened.height <= innerHeight;
  const left = Math.max(edgePx, Math.min(button.left, innerWidth - opened.width - edgePx));
  return { left, top: fitsBelow ? below : Math.max(edgePx, button.top - opened.height - gapPx) };
}
