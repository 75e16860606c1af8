import type { Language } from "../record/index.ts";
import type { Remake } from "../workbook/index.ts";
import { areChapters, chaptersOf } from "./chapters.ts";
import { wordsIn } from "./words/index.ts";

/** Something to put right before publishing. `blocks`: the text is not ready to be copied without it. */
export type Reminder = Readonly<{ id: "disclosure" | "chapters" | "tags"; text: string; blocks: boolean }>;

/** What the episode still lacks. It reminds; it is not legal advice. */
export function remindersFor(
  remake: Pick<Remake, "log" | "episode">,
  language: Language = "en",
): readonly Reminder[] {
  const words = wordsIn[language].reminders;
  const chapters = chaptersOf(remake);
  const tags = remake.episode?.tags ?? [];
  const reminders: readonly (Reminder | false)[] = [
    !remake.episode?.disclosure && {
      id: "disclosure",
      text: words.disclosure,
      blocks: true,
    },
    chapters.length > 0 &&
      !areChapters(chapters) && {
        id: "chapters",
        text: words.chapters,
        blocks: false,
      },
    tags.length > 0 &&
      (tags.length < 3 || tags.length > 5) && {
        id: "tags",
        text: words.tags,
        blocks: false,
      },
  ];
  return reminders.filter((reminder) => reminder !== false);
}
