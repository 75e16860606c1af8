/** How wide the place for a drawing is, in px, and how large the reader's text beside the usual 16 px. */
export type Room = Readonly<{ width: number; textScale: number }>;

// Below this, in rem, a table of many columns would break its words up; above `stacked` it is still a table.
const compactBelow = 50;
const stackedBelow = 35;

/** Whether a table has room for its most important columns only. */
export function isCompact(room: Room | null): boolean {
  if (!room) return false;
  const rem = room.width / (16 * room.textScale);
  return rem >= stackedBelow && rem < compactBelow;
}
