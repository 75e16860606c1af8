/** How wide the place for a drawing is, in px, and how large the reader's text beside the usual 16 px. */
export type Room = Readonly<{ width: number; textScale: number }>;

/**
 * A sheet of A4 between its margins of 16 mm, where text is set smaller than on a screen; US Letter is 22 px
 * wider. The widths belong to ISO 216 and ANSI/ASME Y14.1, the margins to styles/print.css.
 */
export const onPaper: Room = { width: 672, textScale: 14 / 17 };

// Below this, in rem, a table of many columns would break its words up; above `stacked` it is still a table.
const compactBelow = 50;
const stackedBelow = 35;

/** Whether a table has room for its most important columns only. */
export function isCompact(room: Room | null): boolean {
  if (!room) return false;
  const rem = room.width / (16 * room.textScale);
  return rem >= stackedBelow && rem < compactBelow;
}
