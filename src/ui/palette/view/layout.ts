import { type Disc, discOf } from "./disc.ts";
import { type Ladder, ladderOf } from "./ladder.ts";
import type { PaletteView } from "./palette.ts";
import { measuresFor, type Room } from "./room.ts";

export type PaletteLayout = Readonly<{ beside: boolean; disc: Disc; ladder: Ladder }>;

/** Both pictures in px for a given room, to one scale. Words in them grow with the reader's text size. */
export function layoutOf({ entries, most }: PaletteView, room: Room): PaletteLayout {
  const measures = measuresFor(entries, room);
  return {
    beside: measures.beside,
    disc: discOf(entries, most, measures, room.textScale),
    ladder: ladderOf(entries, most, measures, room.textScale),
  };
}
