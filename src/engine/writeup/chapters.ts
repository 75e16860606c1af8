import type { Remake } from "../workbook/index.ts";

export type Chapter = Readonly<{ seconds: number; text: string }>;

const form = /^(?:(\d+):)?(\d{1,2}):(\d{2})$/;

/** Seconds of a time such as `1:05` or `1:02:03`, or null when it is none. */
export function secondsOf(at: string | null | undefined): number | null {
  const parts = form.exec(at?.trim() ?? "");
  if (!parts) return null;
  return Number(parts[1] ?? 0) * 3600 + Number(parts[2]) * 60 + Number(parts[3]);
}

/** A time as chapters write it: `0:00`, `12:30`, `1:02:03`. */
export function timeWords(seconds: number): string {
  const two = (n: number) => String(n).padStart(2, "0");
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60)];
  const tail = two(seconds % 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${tail}` : `${minutes}:${tail}`;
}

/** The log's entries that carry a time and a text, in order of time. */
export const chaptersOf = (remake: Pick<Remake, "log">): readonly Chapter[] =>
  (remake.log ?? [])
    .flatMap(({ at, text }) => {
      const seconds = secondsOf(at);
      return seconds === null || !text ? [] : [{ seconds, text }];
    })
    .toSorted((a, b) => a.seconds - b.seconds);

/** Whether platforms take these as chapters: from 0:00, at least three, each ten seconds or more. */
export const areChapters = (chapters: readonly Chapter[]): boolean =>
  chapters.length >= 3 &&
  chapters[0]?.seconds === 0 &&
  chapters.every((chapter, i) => i === 0 || chapter.seconds - (chapters[i - 1]?.seconds ?? 0) >= 10);
