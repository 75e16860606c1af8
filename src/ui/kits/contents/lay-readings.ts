const gapPx = 14;

/** How far below its piece a reading stands, and one a line lower: each is 24 px high, and none lies on another. */
const belowPx = 5;
const lowerPx = belowPx + 24;

/**
 * Moves readings that are wider than their piece to the right, so that none lies on the next; at the right end
 * they are held inside, and one that finds no room there goes a line lower; `data-lower` then says that some did.
 */
export function layReadings(box: HTMLElement): void {
  const room = box.clientWidth;
  let line = Number.NaN;
  let taken = 0;
  let lower = 0;
  let anyLower = false;
  for (const piece of box.children) {
    const reading = piece.querySelector<HTMLElement>("button");
    if (!(piece instanceof HTMLElement) || !reading) continue;
    // A piece may wrap: its reading stands under where it ends, so the last of its boxes counts.
    const boxes = piece.getClientRects();
    const last = boxes[boxes.length - 1];
    if (!last) continue;
    const origin = box.getBoundingClientRect();
    const [left, top] = [last.left - origin.left, last.top - origin.top];
    if (top !== line) [line, taken, lower] = [top, 0, 0];
    const wanted = Math.max(0, Math.min(Math.max(left, taken), room - reading.offsetWidth));
    const isFree = wanted >= taken;
    const at = isFree ? wanted : Math.max(lower, Math.min(left, room - reading.offsetWidth));
    reading.style.left = `${at}px`;
    reading.style.top = `${top + last.height + (isFree ? belowPx : lowerPx)}px`;
    anyLower ||= !isFree;
    if (isFree) taken = at + reading.offsetWidth + gapPx;
    else lower = at + reading.offsetWidth + gapPx;
  }
  box.toggleAttribute("data-lower", anyLower);
}
