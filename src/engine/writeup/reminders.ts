import type { Remake } from "../workbook/index.ts";
import { areChapters, chaptersOf } from "./chapters.ts";

/** Something to put right before publishing. `blocks`: the text is not ready to be copied without it. */
export type Reminder = Readonly<{ id: "disclosure" | "chapters" | "tags"; text: string; blocks: boolean }>;

/** What the episode still lacks. It reminds; it is not legal advice. */
export function remindersFor(remake: Pick<Remake, "log" | "episode">): readonly Reminder[] {
  const chapters = chaptersOf(remake);
  const tags = remake.episode?.tags ?? [];
  const reminders: readonly (Reminder | false)[] = [
    !remake.episode?.disclosure && {
      id: "disclosure",
      text: "Say how the supplies came to you: bought, gifted, lent, sponsored, affiliate or your own. Say it in the video too.",
      blocks: true,
    },
    chapters.length > 0 &&
      !areChapters(chapters) && {
        id: "chapters",
        text: "Chapters need at least three times, the first 0:00, each ten seconds or more after the last. Until then they stay out.",
        blocks: false,
      },
    tags.length > 0 &&
      (tags.length < 3 || tags.length > 5) && {
        id: "tags",
        text: "Three to five tags work best; more than 15 are cut.",
        blocks: false,
      },
  ];
  return reminders.filter((reminder) => reminder !== false);
}
